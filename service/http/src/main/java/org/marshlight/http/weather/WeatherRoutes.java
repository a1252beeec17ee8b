package org.marshlight.http.weather;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestQuery;
import org.marshlight.WeatherAnswer;
import org.marshlight.http.limits.Admission;
import org.marshlight.http.query.Flag;

/** Reduces hourly weather files to what a plan can hold. */
@Path("/v1/climates/from-weather-file")
@Consumes(MediaType.TEXT_PLAIN)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "catalogues")
public class WeatherRoutes {

  private final Admission admission;

  public WeatherRoutes(Admission admission) {
    this.admission = admission;
  }

  @POST
  @Operation(
      operationId = "readWeatherFile",
      summary = "An hourly weather file (EPW or TMY3 text) as a site's climate")
  public WeatherAnswer read(byte[] file, @RestQuery String hours) {
    boolean withHours = Flag.of("hours", hours, true);
    return admission.admit(() -> WeatherAnswer.of(file, withHours));
  }
}
