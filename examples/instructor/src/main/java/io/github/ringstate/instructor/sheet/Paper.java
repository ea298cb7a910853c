package io.github.ringstate.instructor.sheet;

/** Sizes of paper. */
public enum Paper {
  /** ISO 216 A4. */
  A4("a4", "A4", "210mm 297mm"),
  /** North American letter. */
  LETTER("letter", "Letter", "216mm 279mm");

  private final String label;
  private final String title;
  private final String size;

  Paper(String label, String title, String size) {
    this.label = label;
    this.title = title;
    this.size = size;
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
   * Width and height upright.
   *
   * @return as style sheets write them
   */
  public String size() {
    return size;
  }
}
