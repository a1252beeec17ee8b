package org.marshlight.http;

import io.restassured.RestAssured;
import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Scanner;

/** Sends bytes as they are, so that a request may be as ill formed as it likes. */
final class RawRequest {

  private RawRequest() {}

  /** Everything that comes back until the service closes the connection. */
  static String send(String request) throws IOException {
    try (Socket socket = connected(request)) {
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** Status line and headers of what comes back. */
  static String head(String request) throws IOException {
    try (Socket socket = connected(request);
        Scanner scanner = new Scanner(socket.getInputStream(), StandardCharsets.UTF_8)) {
      return scanner.useDelimiter("\r\n\r\n").next();
    }
  }

  private static Socket connected(String request) throws IOException {
    Socket socket = new Socket("localhost", RestAssured.port);
    socket.setSoTimeout(Math.toIntExact(Patience.LONGEST.toMillis()));
    OutputStream out = socket.getOutputStream();
    out.write(request.getBytes(StandardCharsets.ISO_8859_1));
    out.flush();
    return socket;
  }
}
