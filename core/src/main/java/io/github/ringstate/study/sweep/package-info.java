/**
 * Sweeps: encounters over any number of settings, as many as wanted.
 *
 * <p>A {@link io.github.ringstate.study.sweep.SweepSpec} says what is flown in plain values: some
 * settings are fixed, some go along an {@link io.github.ringstate.study.sweep.Axis} (a list, a
 * range, a range by ratios, words), some are sampled together as a {@link
 * io.github.ringstate.study.sweep.Sample} (Latin hypercube, Sobol sequence), and pilots may be
 * drawn by number. {@link io.github.ringstate.study.sweep.Settings} lists all that may be set:
 * every number of craft, air, disturbances, entry, technique and inflow model. A {@link
 * io.github.ringstate.study.sweep.Sweep} checks it and knows each point by its index; a {@link
 * io.github.ringstate.study.sweep.SweepFlight} flies it on several threads and hands the rows to a
 * sink:
 *
 * <pre>
 * Sweep sweep =
 *     new Sweep(
 *         new SweepSpec(
 *             1, 0,
 *             List.of(new Axis.Words("craft.name", List.of("twin"))),
 *             List.of(
 *                 new Axis.Range("craft.mass_kg", 3000, 4200, 13, Scale.LINEAR),
 *                 new Axis.Numbers("pilot.delay_s", List.of(0.0, 1.0, 2.0))),
 *             Sample.NONE));
 * new SweepFlight(sweep, 2).fly(0, sweep.count(), rows -&gt; { ... }, Progress.SILENT);
 * </pre>
 *
 * <p>The order of points is that of a number with many digits: the sample comes first and varies
 * slowest, then the axes in the order of {@link io.github.ringstate.study.sweep.Settings#GROUPS},
 * those of one group as they are listed, and pilots last and fastest. A sample of pilots' settings
 * alone stands before their axes. Points that differ in the pilot alone therefore follow each other
 * and share the flight before recognition.
 *
 * <p>Gusts and shaking come from the seed alone or, where pilots are drawn, from the seed and the
 * pilot's number. Points of a grid or a sample therefore meet one and the same gusts: they differ
 * in what is set and not in chance, and a mean over points is no mean over gusts. Pilots are what
 * averages them.
 *
 * <p>A number that cannot be is refused when the sweep is made. A combination that cannot be, each
 * number being possible by itself, is found when its point is flown; it becomes a row that says
 * why, and the sweep goes on. So does a point whose craft has no steady flight to start from. A
 * fault of the program is never a row: it ends the sweep with the number of the point and its
 * cause.
 */
@NullMarked
package io.github.ringstate.study.sweep;

import org.jspecify.annotations.NullMarked;
