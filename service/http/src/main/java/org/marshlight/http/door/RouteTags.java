package org.marshlight.http.door;

import io.micrometer.core.instrument.config.MeterFilter;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.util.Set;

/**
 * Keeps metrics to a bounded number of series: requests are counted by route and method, never by a
 * path or a method that someone made up.
 */
public class RouteTags {

  private static final String OTHER = "OTHER";

  /** The methods that the registry of RFC 9110, section 16.1, began with, and PATCH (RFC 5789). */
  private static final Set<String> METHODS =
      Set.of("GET", "HEAD", "POST", "PUT", "DELETE", "CONNECT", "OPTIONS", "TRACE", "PATCH");

  private static final Set<String> OF_THE_FRAMEWORK =
      Set.of("/q/health", "/q/health/live", "/q/health/ready", "/q/metrics", "/q/openapi");

  @Produces
  @Singleton
  MeterFilter byRoute() {
    return MeterFilter.replaceTagValues("uri", RouteTags::route);
  }

  @Produces
  @Singleton
  MeterFilter byMethod() {
    return MeterFilter.replaceTagValues(
        "method", method -> METHODS.contains(method) ? method : OTHER);
  }

  static String route(String path) {
    boolean word = !path.startsWith("/");
    if (word || OF_THE_FRAMEWORK.contains(path)) {
      return path;
    }
    if (path.contains("{")) {
      return path.replaceAll("\\{(\\w+):[^}]*}", "{$1}");
    }
    return Surface.at(path).map(surface -> surface.route(path)).orElse(OTHER);
  }
}
