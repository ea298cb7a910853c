package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.remote.CapabilityType;

/**
 * The system's browser without a window, driven as by a person (W3C WebDriver). Nothing is
 * downloaded: browser and driver are those of the system.
 */
final class Chromium implements AutoCloseable {

  private static final List<Path> BROWSERS =
      List.of(Path.of("/usr/bin/chromium"), Path.of("/usr/bin/chromium-browser"));
  private static final List<Path> DRIVERS =
      List.of(Path.of("/usr/bin/chromedriver"), Path.of("/usr/lib/chromium-browser/chromedriver"));

  /** Selenium warns that it knows no newer protocol of the browser's own; a page needs none. */
  private static final Logger WARNINGS = Logger.getLogger("org.openqa.selenium");

  private static final Duration PATIENCE = Duration.ofSeconds(60);

  private final ChromeDriver driver = Kept.DRIVER;

  /** One browser for all pages of a run of tests: to start it takes longer than most tests. */
  private static final class Kept {

    private static final ChromeDriver DRIVER = start();

    static {
      Runtime.getRuntime().addShutdownHook(new Thread(DRIVER::quit));
    }
  }

  private static ChromeDriver start() {
    WARNINGS.setLevel(Level.SEVERE);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(first(BROWSERS).toFile());
    options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--hide-scrollbars");
    LoggingPreferences all = new LoggingPreferences();
    all.enable(LogType.BROWSER, Level.ALL);
    options.setCapability(ChromeOptions.LOGGING_PREFS, all);
    options.setCapability(CapabilityType.ACCEPT_INSECURE_CERTS, false);
    return new ChromeDriver(
        new ChromeDriverService.Builder()
            .usingDriverExecutable(first(DRIVERS).toFile())
            .usingAnyFreePort()
            .build(),
        options);
  }

  private static Path first(List<Path> places) {
    return places.stream().filter(Files::isExecutable).findFirst().orElseThrow();
  }

  /** Skips what needs a browser where there is none, and says so. */
  static void isThere() {
    boolean there =
        BROWSERS.stream().anyMatch(Files::isExecutable)
            && DRIVERS.stream().anyMatch(Files::isExecutable);
    if (!there) {
      System.err.println(
          """

          ******************************************************************************
          NO BROWSER: the tests of pages in a browser are NOT RUN. They need Chromium
          and its driver (Debian: apt-get install chromium chromium-driver).
          ******************************************************************************
          """);
    }
    assumeTrue(there, "no browser");
  }

  /** Shows a page. */
  void open(URI page) {
    driver.get(page.toString());
  }

  /** A part of the page. */
  WebElement find(String css) {
    return driver.findElement(By.cssSelector(css));
  }

  /** Parts of the page. */
  List<WebElement> all(String css) {
    return driver.findElements(By.cssSelector(css));
  }

  /** Replaces what is in a field, as a person does who selects all of it and types. */
  void type(String css, String text) {
    find(css).sendKeys(Keys.chord(Keys.CONTROL, "a"), text);
  }

  /** What a script says of the page. */
  String ask(String expression) {
    return String.valueOf(driver.executeScript("return String(" + expression + ")"));
  }

  /** Lets a script change the page. */
  void run(String script) {
    driver.executeScript(script);
  }

  /** Waits until something is so. */
  void await(String expression) throws InterruptedException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (!ask(expression).equals("true")) {
      assertTrue(System.nanoTime() < end, () -> expression + " is not so after " + PATIENCE);
      Thread.sleep(20);
    }
  }

  /** Presses a key where the focus is. */
  void press(CharSequence key) {
    driver.switchTo().activeElement().sendKeys(key);
  }

  /** Makes the window of a size, in pixels. */
  void sized(int width, int height) throws InterruptedException {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    await("window.innerWidth === " + width);
    // the page hears of its new width when the next frame is drawn
    driver.executeAsyncScript(
        "const done = arguments[0];"
            + "requestAnimationFrame(() => requestAnimationFrame(() => done()));");
  }

  /** The page as it would be printed: a PDF. */
  byte[] printed() {
    Map<String, Object> answer =
        driver.executeCdpCommand(
            "Page.printToPDF", Map.of("preferCSSPageSize", true, "printBackground", false));
    return Base64.getDecoder().decode(String.valueOf(answer.get("data")));
  }

  /** What went to the console since it was asked for last. */
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(LogEntry::getMessage)
        .toList();
  }

  /** The driver itself, for windows. */
  ChromeDriver driver() {
    return driver;
  }

  /** Leaves the browser as the next page wants it. */
  @Override
  public void close() {
    driver.executeCdpCommand("Emulation.clearDeviceMetricsOverride", Map.of());
    driver.get("about:blank");
    complaints();
  }
}
