package io.github.ringstate.sheets.page;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.samskivert.mustache.Escapers;
import com.samskivert.mustache.Mustache;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.sheets.page.Pictured.Picture;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.util.HashMap;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A template filled in. Whatever is filled in is escaped for HTML, except what a template marks as
 * being markup of the tool's own: its style, its drawings, its data.
 */
final class Template {

  /** A number and a unit that a line might otherwise be broken in. */
  private static final Pattern QUANTITY = Pattern.compile("[0-9.]+ (m/s|ft/min)");

  /** In a model: that the page has letters which are printed as #. */
  static final String LACKING = "isLacking";

  private static final Mustache.Compiler COMPILER =
      Mustache.compiler().emptyStringIsFalse(true).withEscaper(Template::escaped);

  private Template() {}

  /**
   * Fills a page in.
   *
   * @param page the page
   * @param draw makes markup of a picture and its name
   * @return a whole document
   */
  static String fill(Page page, BiFunction<String, Picture, String> draw) {
    Mustache.Compiler compiler = COMPILER.withLoader(name -> reader(page.owner(), name));
    Map<String, Object> model = new HashMap<>(page.model());
    page.pictures().forEach((name, picture) -> model.put(name, draw.apply(name, picture)));
    model.put("title", page.title());
    model.put("caution", Caution.TEXT);
    model.put("version", version());
    model.put("fonts", "");
    String bare = compiler.loadTemplate(page.template()).execute(model);
    model.put("fonts", SheetFont.faces(bare));
    return compiler.loadTemplate(page.template()).execute(model);
  }

  /** Escaped for HTML; units with a stroke stay whole and with their number. */
  private static String escaped(String text) {
    return QUANTITY
        .matcher(Escapers.HTML.escape(text))
        .replaceAll("<span class=\"unit\">$0</span>");
  }

  private static String version() {
    @Nullable String version = Template.class.getPackage().getImplementationVersion();
    return version == null ? "outside its jar" : version;
  }

  /** A template of the page's own, or one that all sheets share. */
  private static Reader reader(Class<?> owner, String name) {
    InputStream own = owner.getResourceAsStream(name);
    InputStream in = own == null ? Template.class.getResourceAsStream(name) : own;
    if (in == null) {
      throw new IllegalStateException("the template " + name + " is missing from the tool");
    }
    return new InputStreamReader(in, UTF_8);
  }
}
