/**
 * Sweep files: what a sweep flies, written down as TOML with the unit in each key.
 *
 * <p>A file has a table for each group of {@link io.github.ringstate.study.sweep.Settings}: {@code
 * [craft]}, {@code [air]}, {@code [entry]}, {@code [pilot]}, {@code [model]}, {@code
 * [disturbance]}. In it, each setting is one of
 *
 * <pre>
 * pressure_altitude_ft = 3000                                # fixed; has no column
 * pressure_altitude_ft = [0, 3000, 6000]                     # an axis; a list of one has a column too
 * pressure_altitude_ft = { from = 0, to = 6000, values = 7 } # an axis, both ends included
 * delay_s = { from = 0.25, to = 4, values = 5, scale = "log" } # equal ratios
 * mass_kg = { from = 480, to = 620, sampled = true }         # sampled together with the others
 * mass_kg = { distribution = "normal", mean = 560, sd = 20 } # sampled too
 * name = ["trainer", "mine.toml"]                            # words; a craft file beside the sweep
 * </pre>
 *
 * <p>Settings that are {@code sampled} need a table {@code [sample]} with {@code method =
 * "latin-hypercube"}, {@code "sobol"} or {@code "independent"} and the number of {@code points}. In
 * {@code [pilot]}, {@code count} draws so many pilots by number, the same ones for every point,
 * evenly spread or, with {@code draws = "independent"}, each by itself; {@code state} then draws
 * their delays, and without a count sets the median delay. {@code seed} stands at the top. {@code
 * [output]} says in which {@code units} results are written, {@code "aviation"} or {@code "si"},
 * whether the {@code drawn_numbers} of each pilot are columns, and whether the last column but one
 * says which outcomes are {@code sensitive} ({@link io.github.ringstate.encounter.EdgeCheck}), for
 * which each point is flown three times.
 *
 * <p>A distribution is normal ({@code mean}, {@code sd}), log-normal ({@code median}, {@code p90}),
 * gamma ({@code mean}, {@code sd}), uniform ({@code from}, {@code to}) or triangular ({@code from},
 * {@code mode}, {@code to}). With {@code from} and {@code to} the others are cut off there, and
 * only what lies between is drawn; without, at most one per cent may lie outside the setting's
 * range.
 *
 * <p>The keys of {@code [craft]} are those of a craft file without its tables, so its lines can be
 * pasted. The text, with those of the craft files that it names and the extensions that it is read
 * with, says all that is flown. An example is {@code sweep-example.toml} beside this package's
 * classes.
 */
@NullMarked
package io.github.ringstate.files.sweep;

import org.jspecify.annotations.NullMarked;
