package io.github.ringstate.crooked.recording;

import io.github.ringstate.crooked.study.HonestStudy;

record RecordingThatKnowsStudies(HonestStudy study) {}
