package org.barsheet.browser;

import com.google.gson.JsonParser;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import org.barsheet.outside.RegistryScores;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** The system's Chromium with a page in it. */
final class Browser implements AutoCloseable {

  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

  private final ChromeDriver driver;

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  /**
   * Skips a check with a word where there is no browser, or fails it where outside checks are
   * required.
   */
  static void required() {
    if (!Files.isExecutable(CHROMIUM) || !Files.isExecutable(DRIVER)) {
      RegistryScores.missing("there is no " + CHROMIUM + " with " + DRIVER);
    }
  }

  /**
   * Starts it.
   *
   * @param downloads where files go that a page saves
   */
  static Browser start(Path downloads) {
    ChromeOptions options = new ChromeOptions();
    options.setBinary(CHROMIUM.toFile());
    options.addArguments(
        "--headless=new", "--no-sandbox", "--autoplay-policy=no-user-gesture-required");
    options.setExperimentalOption(
        "prefs", Map.of("download.default_directory", downloads.toString()));
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    logs.enable(LogType.BROWSER, Level.ALL);
    options.setCapability("goog:loggingPrefs", logs);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(new File(DRIVER.toString()))
            .usingAnyFreePort()
            .build();
    ChromeDriver driver = new ChromeDriver(service, options);
    driver.manage().timeouts().scriptTimeout(Duration.ofSeconds(30));
    return new Browser(driver);
  }

  void open(Path page) {
    driver.get(page.toUri().toString());
  }

  /** Opens what a server shows. */
  void visit(String address) {
    driver.get(address);
  }

  /** Drags with the mouse, from a place on the screen to another, in pixels. */
  void drag(int fromX, int fromY, int toX, int toY) {
    new Actions(driver)
        .moveToLocation(fromX, fromY)
        .clickAndHold()
        .moveToLocation((fromX + toX) / 2, (fromY + toY) / 2)
        .moveToLocation(toX, toY)
        .release()
        .perform();
  }

  void width(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 500));
  }

  /** Which of light and dark the viewer's system is set to (Media Queries Level 5, 12.5). */
  void light(String light) {
    Map<String, Object> wish = Map.of("name", "prefers-color-scheme", "value", light);
    driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", List.of(wish)));
  }

  /** Whether the viewer has asked their system for less motion (Media Queries Level 5, 12.1). */
  void reducedMotion(boolean asked) {
    Map<String, Object> wish =
        Map.of("name", "prefers-reduced-motion", "value", asked ? "reduce" : "no-preference");
    driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", List.of(wish)));
  }

  /** The page as it is printed on A4, a PDF file. */
  byte[] printed() {
    Map<String, Object> printed =
        driver.executeCdpCommand(
            "Page.printToPDF", Map.of("paperWidth", 8.27, "paperHeight", 11.69));
    return Base64.getDecoder().decode(String.valueOf(printed.get("data")));
  }

  WebElement find(String selector) {
    return driver.findElement(By.cssSelector(selector));
  }

  /** A part of the page as it looks, a PNG file. */
  byte[] look(String selector) {
    return find(selector).getScreenshotAs(OutputType.BYTES);
  }

  String text(String selector) {
    return find(selector).getText();
  }

  void press(String id) {
    driver.findElement(By.id(id)).click();
  }

  void keys(CharSequence... keys) {
    find("body").sendKeys(keys);
  }

  /** Presses keys where the focus is. */
  void keysToFocus(CharSequence... keys) {
    new Actions(driver).sendKeys(keys).perform();
  }

  /** Types over what stands where the focus is. */
  void typeOver(String words) {
    driver.switchTo().activeElement().sendKeys(Keys.chord(Keys.CONTROL, "a"), words);
  }

  void escape() {
    driver.switchTo().activeElement().sendKeys(Keys.ESCAPE);
  }

  /** Runs a script in the page; what it returns must be there. */
  Object run(String script, Object... given) {
    Object answer = driver.executeScript(script, given);
    return answer == null ? "" : answer;
  }

  long number(String script, Object... given) {
    return ((Number) run("return " + script, given)).longValue();
  }

  /** Runs a script that calls its last argument with the answer. */
  Object later(String script, Object... given) {
    Object answer = driver.executeAsyncScript(script, given);
    return answer == null ? "" : answer;
  }

  /** What the page wrote to the console, and how it broke its policy. */
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(entry -> entry.getLevel() + " " + entry.getMessage())
        .toList();
  }

  /** The beginning of every address that was asked for since the last call, but for data inside. */
  List<String> requests() {
    return driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
        .map(entry -> JsonParser.parseString(entry.getMessage()).getAsJsonObject())
        .map(entry -> entry.getAsJsonObject("message"))
        .filter(message -> message.get("method").getAsString().equals("Network.requestWillBeSent"))
        .map(message -> message.getAsJsonObject("params").getAsJsonObject("request"))
        .map(request -> request.get("url").getAsString())
        .filter(url -> !url.startsWith("data:"))
        .toList();
  }

  @Override
  public void close() {
    driver.quit();
  }
}
