package io.github.ringstate.sheets.chart;

import io.github.ringstate.sheets.page.Pictured.Picture;
import java.awt.Graphics2D;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Pictures side by side, from left to right.
 *
 * @param pictures the pictures
 * @param gap room between two of them, in pixels
 */
public record Beside(List<Picture> pictures, int gap) implements Picture {

  /** Copies the list. */
  public Beside {
    pictures = List.copyOf(pictures);
  }

  @Override
  public int width() {
    return pictures.stream().mapToInt(Picture::width).sum() + gap * (pictures.size() - 1);
  }

  @Override
  public int height() {
    return pictures.stream().mapToInt(Picture::height).max().orElse(0);
  }

  @Override
  public String description() {
    return pictures.stream().map(Picture::description).collect(Collectors.joining("; "));
  }

  @Override
  public void paint(Graphics2D graphics) {
    int left = 0;
    for (Picture picture : pictures) {
      Graphics2D own = (Graphics2D) graphics.create();
      own.translate(left, 0);
      picture.paint(own);
      own.dispose();
      left += picture.width() + gap;
    }
  }
}
