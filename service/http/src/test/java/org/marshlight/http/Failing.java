package org.marshlight.http;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.StreamingOutput;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.marshlight.Answer;
import org.marshlight.Meta;
import org.marshlight.safety.CautionBook;

/** Routes of the tests alone, which fail in ways that no route of the product should. */
@Path("/test-only")
public class Failing {

  /** One permit for each request that is held. */
  static final Semaphore HELD = new Semaphore(0);

  /** Open once whatever is held may go. */
  static final CountDownLatch LET_GO = new CountDownLatch(1);

  private static final long SLOW_MS = 2500;

  @GET
  @Path("/in-the-route")
  @Operation(hidden = true)
  public String inTheRoute() {
    throw new IllegalStateException("secret of the house");
  }

  @GET
  @Path("/in-the-framework")
  @Operation(hidden = true)
  public String inTheFramework() {
    throw new WebApplicationException("secret of the house", 502);
  }

  @GET
  @Path("/while-writing")
  @Produces("text/csv")
  @Operation(hidden = true)
  public Answer<Unreadable> whileWriting() {
    return new Answer<>(
        new Unreadable(1),
        CautionBook.standard().general(),
        List.of(),
        List.of(),
        Meta.WITHOUT_PLAN);
  }

  /** Reports that it is asked, and answers only when it is let go. */
  @GET
  @Path("/held")
  @Operation(hidden = true)
  public String held() throws InterruptedException {
    HELD.release();
    return String.valueOf(LET_GO.await(Patience.LONGEST.toMinutes(), TimeUnit.MINUTES));
  }

  /** Answers later than the timer of the tests for idle connections. */
  @GET
  @Path("/slow")
  @Operation(hidden = true)
  public String slow() throws InterruptedException {
    Thread.sleep(SLOW_MS);
    return "at last";
  }

  /** The same between two lines. */
  @GET
  @Path("/slow-lines")
  @Operation(hidden = true)
  public StreamingOutput slowLines() {
    return output -> {
      output.write("first\n".getBytes(StandardCharsets.US_ASCII));
      output.flush();
      try {
        Thread.sleep(SLOW_MS);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
      output.write("last\n".getBytes(StandardCharsets.US_ASCII));
    };
  }

  /** A record that cannot be read back. */
  public record Unreadable(double figure) {

    @Override
    public double figure() {
      throw new IllegalStateException("secret of the house");
    }
  }
}
