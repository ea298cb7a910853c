package io.github.ringstate.calibration;

import io.github.ringstate.recording.Estimate;

/**
 * How the fitted model follows an encounter.
 *
 * @param name the demonstration
 * @param readings how many readings were held against the model's flight
 * @param chiSquare chi-square of heights and vertical speeds per degree of freedom, by the noise
 *     that the recording itself shows; near 1 if the model follows
 * @param recordedLoss altitude lost from the recorded onset, m
 * @param fittedLoss what the fitted flight loses from the same time, m
 */
public record FittedEncounter(
    String name, int readings, double chiSquare, Estimate recordedLoss, double fittedLoss) {}
