package io.github.ringstate.crooked.craft;

final class CraftUtils {}
