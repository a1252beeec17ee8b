package org.marshlight.http.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.marshlight.http.Patience;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.remote.http.ClientConfig;
import org.openqa.selenium.support.ui.WebDriverWait;

/** One browser without a window, and what a person does with it. */
final class Browser implements AutoCloseable {

  /** What a person with no great hurry and no slow machine sees as one screen. */
  private static final int WIDTH = 1280;

  private static final int HEIGHT = 900;

  private final Path profile;
  private final ChromeDriver driver;

  Browser() throws IOException {
    profile = Files.createTempDirectory("browser");
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, java.util.logging.Level.ALL);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(program("chromium", "chromium-browser", "google-chrome"));
    options.setCapability("goog:loggingPrefs", logs);
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-dev-shm-usage",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--hide-scrollbars",
        "--user-data-dir=" + profile);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(program("chromedriver"))
            .usingAnyFreePort()
            .withTimeout(Patience.LONGEST)
            .build();
    driver =
        new ChromeDriver(
            service, options, ClientConfig.defaultConfig().readTimeout(Patience.LONGEST));
    driver.manage().timeouts().scriptTimeout(Patience.LONGEST).pageLoadTimeout(Patience.LONGEST);
    size(WIDTH, HEIGHT);
  }

  ChromeDriver driver() {
    return driver;
  }

  /** Sets the size of the screen in pixels of the style sheet. */
  void size(int width, int height) {
    command(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  /** The usual size. */
  void usualSize() {
    size(WIDTH, HEIGHT);
  }

  void open(String address) {
    driver.get("about:blank");
    driver.get(address);
    settled("worked");
  }

  /** Waits until the page has come to rest in a state. */
  void settled(String state) {
    until(() -> state.equals(js("return document.body.dataset.state")));
  }

  void until(java.util.function.BooleanSupplier what) {
    new WebDriverWait(driver, Patience.LONGEST, Duration.ofMillis(50))
        .until(d -> what.getAsBoolean());
  }

  Object js(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  Map<String, Object> command(String name, Map<String, Object> parameters) {
    return driver.executeCdpCommand(name, parameters);
  }

  WebElement find(String selector) {
    return driver.findElement(By.cssSelector(selector));
  }

  List<WebElement> all(String selector) {
    return driver.findElements(By.cssSelector(selector));
  }

  /** The field of a plan that a pointer names. */
  WebElement field(String pointer) {
    return find("[name=\"" + pointer + "\"]");
  }

  /** Types into a field in place of what stands there. */
  void type(String pointer, String text) {
    field(pointer).sendKeys(Keys.chord(Keys.CONTROL, "a"), text);
  }

  /** Presses what may lie outside of the screen. */
  void press(WebElement element) {
    js("arguments[0].scrollIntoView({block: 'center'})", element);
    element.click();
  }

  /** The console is where a page complains. */
  void hasNoComplaints() {
    assertThat(driver.manage().logs().get(LogType.BROWSER).getAll())
        .filteredOn(
            entry -> entry.getLevel().intValue() >= java.util.logging.Level.WARNING.intValue())
        .isEmpty();
  }

  @Override
  public void close() throws IOException {
    driver.quit();
    try (Stream<Path> files = Files.walk(profile)) {
      files.sorted(java.util.Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
    }
  }

  private static File program(String... names) {
    String path = System.getenv("PATH");
    return Arrays.stream(names)
        .flatMap(name -> Arrays.stream(path.split(File.pathSeparator)).map(d -> new File(d, name)))
        .filter(File::canExecute)
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "The page is tested in a browser, and there is no "
                        + names[0]
                        + " on the path. Install Chromium with its driver (on Debian: apt-get"
                        + " install chromium chromium-driver), or run .ci/run, which does."));
  }
}
