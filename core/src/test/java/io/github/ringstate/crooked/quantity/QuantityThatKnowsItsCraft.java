package io.github.ringstate.crooked.quantity;

import io.github.ringstate.crooked.craft.HonestCraft;

record QuantityThatKnowsItsCraft(HonestCraft craft) {}
