package org.marshlight.http.door;

/** The order in which a request passes the filters of the router; the greatest comes first. */
public final class FilterOrder {

  /** Whatever happens next, the response will have its standing headers. */
  public static final int STANDING_HEADERS = Integer.MAX_VALUE;

  /** A service that is stopping takes nothing new. */
  public static final int STOPPING = Integer.MAX_VALUE - 1;

  /** Requests that no route can serve go no further. */
  public static final int DOORKEEPER = Integer.MAX_VALUE - 2;

  /** Bodies are read and counted only for requests that may be served. */
  public static final int BODY_LIMIT = Integer.MAX_VALUE - 3;

  /** What was read, if only nothing, is kept for the routes. */
  public static final int BODY_READ = Integer.MAX_VALUE - 4;

  private FilterOrder() {}
}
