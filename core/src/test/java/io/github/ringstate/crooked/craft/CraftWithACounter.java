package io.github.ringstate.crooked.craft;

final class CraftWithACounter {
  static int count;
}
