package io.github.ringstate.instructor.floor;

import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.pilot.PilotState;

/**
 * What to brief to pilots of one state.
 *
 * @param conditions craft, mass and air
 * @param state the state of the pilots
 * @param briefing what to brief
 */
record StateBriefing(Conditions conditions, PilotState state, HeightBriefing briefing) {}
