package io.github.ringstate.sheets.page;

import io.github.ringstate.files.text.Decimals;

/** Sizes of paper. */
public enum Paper {
  /** ISO 216 A4. */
  A4("a4", "A4", 210, 297),
  /** North American letter. */
  LETTER("letter", "Letter", 215.9, 279.4);

  private final String label;
  private final String title;
  private final double narrow;
  private final double wide;

  Paper(String label, String title, double narrow, double wide) {
    this.label = label;
    this.title = title;
    this.narrow = narrow;
    this.wide = wide;
  }

  /**
   * The size's name.
   *
   * @return one lower-case word
   */
  public String label() {
    return label;
  }

  /**
   * The size's name for people.
   *
   * @return one word
   */
  public String title() {
    return title;
  }

  /**
   * Width and height.
   *
   * @param landscape whether the paper lies on its longer side
   * @return as style sheets write them
   */
  String size(boolean landscape) {
    return landscape ? of(wide, narrow) : of(narrow, wide);
  }

  private static String of(double width, double height) {
    return Decimals.brief(width) + "mm " + Decimals.brief(height) + "mm";
  }
}
