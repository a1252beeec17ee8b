package org.marshlight.http.problems;

import io.netty.bootstrap.ServerBootstrap;
import io.netty.channel.Channel;
import io.netty.channel.ChannelHandler;
import io.netty.channel.ChannelInitializer;
import io.netty.handler.codec.http.TooLongHttpHeaderException;
import io.netty.handler.codec.http.TooLongHttpLineException;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.http.impl.HttpServerConnection;
import io.vertx.core.impl.VertxBuilder;
import io.vertx.core.impl.transports.JDKTransport;
import io.vertx.core.net.NetServerOptions;
import io.vertx.core.net.impl.VertxHandler;
import io.vertx.core.spi.VertxServiceProvider;

/**
 * Answers bytes that are no HTTP request, or whose target or headers are too long. The server
 * refuses these before it has a request to route and offers no hook for it, so each connection is
 * told, as it opens, whom to ask. HTTP/2, which sets up its connections later, is switched off.
 */
public final class UnreadableRequests implements VertxServiceProvider {

  @Override
  public void init(VertxBuilder builder) {
    builder.findTransport(new AnsweringTransport());
  }

  private static void answer(HttpServerRequest request) {
    Throwable cause = request.decoderResult().cause();
    ProblemKind kind = ProblemKind.BAD_REQUEST;
    if (cause instanceof TooLongHttpLineException) {
      kind = ProblemKind.TARGET_TOO_LONG;
    } else if (cause instanceof TooLongHttpHeaderException) {
      kind = ProblemKind.HEADERS_TOO_LARGE;
    }
    LastResort.answer(request.response(), kind.status());
    request.response().close();
  }

  private static final class AnsweringTransport extends JDKTransport {

    @Override
    public void configure(
        NetServerOptions options, boolean domainSocket, ServerBootstrap bootstrap) {
      super.configure(options, domainSocket, bootstrap);
      bootstrap.childHandler(new AnsweringConnection(bootstrap.config().childHandler()));
    }
  }

  @ChannelHandler.Sharable
  private static final class AnsweringConnection extends ChannelInitializer<Channel> {

    private final ChannelHandler server;

    AnsweringConnection(ChannelHandler server) {
      this.server = server;
    }

    @Override
    protected void initChannel(Channel channel) {
      channel.pipeline().addLast(server);
      VertxHandler<?> handler = channel.pipeline().get(VertxHandler.class);
      if (handler != null && handler.getConnection() instanceof HttpServerConnection connection) {
        connection.invalidRequestHandler(UnreadableRequests::answer);
      }
    }
  }
}
