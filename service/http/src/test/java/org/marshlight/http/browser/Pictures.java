package org.marshlight.http.browser;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Map;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** What the page looks like, kept as build output; some of it illustrates the planner's guide. */
final class Pictures {

  private static final Path KEPT = Path.of("target", "pictures");
  private static final Path GUIDE = Path.of(System.getProperty("repository"), "docs", "pictures");
  private static final double A4_WIDTH_INCH = 210 / 25.4;
  private static final double A4_HEIGHT_INCH = 297 / 25.4;
  private static final int TALLEST = 16000;
  private static final float DOTS_PER_INCH = 80;
  private static final int PAGES_SHOWN = 3;

  private final Browser browser;

  Pictures(Browser browser) {
    this.browser = browser;
  }

  /** The whole page. */
  void whole(String name) throws IOException {
    follow("static");
    Object height = browser.js("return document.documentElement.scrollHeight");
    int tall = (int) Math.min(TALLEST, ((Number) height).longValue());
    int wide = ((Number) browser.js("return innerWidth")).intValue();
    keep(name, shot(wide, tall));
    follow("");
  }

  /** What one screen shows. */
  void screen(String name) throws IOException {
    keep(name, Base64.getDecoder().decode(seen()));
  }

  /** What one screen shows, for the guide too. */
  void guide(String name) throws IOException {
    byte[] picture = Base64.getDecoder().decode(seen());
    keep(name, picture);
    if (Boolean.getBoolean("update")) {
      Files.createDirectories(GUIDE);
      Files.write(GUIDE.resolve(name + ".png"), picture);
    }
  }

  /** Prints the page, keeps the first sheets as pictures, and gives the text of a sheet. */
  String printed(String name, int sheet) throws IOException {
    byte[] pdf = Base64.getDecoder().decode(printed());
    Files.createDirectories(KEPT);
    Files.write(KEPT.resolve(name + ".pdf"), pdf);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFRenderer renderer = new PDFRenderer(document);
      for (int i = 0; i < Math.min(PAGES_SHOWN, document.getNumberOfPages()); i++) {
        BufferedImage image = renderer.renderImageWithDPI(i, DOTS_PER_INCH);
        ImageIO.write(image, "png", KEPT.resolve(name + "-" + (i + 1) + ".png").toFile());
      }
      PDFTextStripper text = new PDFTextStripper();
      text.setStartPage(sheet);
      text.setEndPage(sheet);
      return text.getText(document).replaceAll("\\s+", " ");
    }
  }

  /** The driver's own command for printing gives up after ten seconds; the browser's does not. */
  private String printed() {
    return (String)
        browser
            .command(
                "Page.printToPDF",
                Map.of("paperWidth", A4_WIDTH_INCH, "paperHeight", A4_HEIGHT_INCH))
            .get("data");
  }

  /** What follows a reader down the page would hide a part of its picture. */
  private void follow(String position) {
    browser.js(
        "document.querySelectorAll('.strip, .bar')"
            + ".forEach((bar) => { bar.style.position = arguments[0]; });",
        position);
  }

  private String seen() {
    return (String) browser.command("Page.captureScreenshot", Map.of()).get("data");
  }

  private byte[] shot(int width, int height) {
    Map<String, Object> clip = Map.of("x", 0, "y", 0, "width", width, "height", height, "scale", 1);
    Map<String, Object> taken =
        browser.command(
            "Page.captureScreenshot", Map.of("captureBeyondViewport", true, "clip", clip));
    return Base64.getDecoder().decode((String) taken.get("data"));
  }

  private static void keep(String name, byte[] picture) throws IOException {
    Files.createDirectories(KEPT);
    Files.write(KEPT.resolve(name + ".png"), picture);
  }
}
