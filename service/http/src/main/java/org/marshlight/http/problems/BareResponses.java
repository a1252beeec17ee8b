package org.marshlight.http.problems;

import io.netty.bootstrap.ServerBootstrap;
import io.netty.buffer.ByteBuf;
import io.netty.buffer.Unpooled;
import io.netty.channel.Channel;
import io.netty.channel.ChannelFutureListener;
import io.netty.channel.ChannelHandler;
import io.netty.channel.ChannelHandlerContext;
import io.netty.channel.ChannelInitializer;
import io.netty.channel.ChannelOutboundHandlerAdapter;
import io.netty.channel.ChannelPromise;
import io.netty.handler.codec.http.DefaultFullHttpResponse;
import io.netty.handler.codec.http.FullHttpResponse;
import io.netty.handler.codec.http.HttpHeaderNames;
import io.netty.handler.codec.http.HttpHeaderValues;
import io.netty.handler.codec.http.HttpResponseEncoder;
import io.vertx.core.impl.VertxBuilder;
import io.vertx.core.impl.transports.JDKTransport;
import io.vertx.core.net.NetServerOptions;
import io.vertx.core.spi.VertxServiceProvider;
import org.marshlight.http.headers.StandingHeaders;
import org.marshlight.http.limits.PatientConnection;
import org.marshlight.json.ContractJson;

/**
 * Gives a problem document and the standing headers to refusals that the server sends below the
 * router, where no handler of ours is asked: bytes that are no request, targets that are no URI,
 * lines and headers that are too long. They are known by the lack of the standing headers, as they
 * pass to the encoder. Connections are watched from here for their patience, too.
 *
 * <p>Holds for cleartext HTTP/1.1, which is all that the service itself speaks.
 */
public final class BareResponses implements VertxServiceProvider {

  @Override
  public void init(VertxBuilder builder) {
    builder.findTransport(new WatchedTransport());
  }

  /** Adds the watch to every connection as it opens. */
  private static final class WatchedTransport extends JDKTransport {

    @Override
    public void configure(
        NetServerOptions options, boolean domainSocket, ServerBootstrap bootstrap) {
      super.configure(options, domainSocket, bootstrap);
      bootstrap.childHandler(new WatchedConnection(bootstrap.config().childHandler()));
    }
  }

  @ChannelHandler.Sharable
  private static final class WatchedConnection extends ChannelInitializer<Channel> {

    private final ChannelHandler server;

    WatchedConnection(ChannelHandler server) {
      this.server = server;
    }

    @Override
    protected void initChannel(Channel channel) {
      channel.pipeline().addLast(server);
      ChannelHandlerContext encoder = channel.pipeline().context(HttpResponseEncoder.class);
      if (encoder != null) {
        channel.pipeline().addAfter(encoder.name(), "watch", new Watch());
        String server = channel.pipeline().lastContext().name();
        channel.pipeline().addBefore(server, "patience", new PatientConnection());
      }
    }
  }

  private static final class Watch extends ChannelOutboundHandlerAdapter {

    private static final int LEAST_ERROR = 400;

    @Override
    public void write(ChannelHandlerContext context, Object message, ChannelPromise promise) {
      if (message instanceof FullHttpResponse response
          && response.status().code() >= LEAST_ERROR
          && !response.headers().contains(StandingHeaders.CAUTIONS)) {
        response.release();
        promise.addListener(ChannelFutureListener.CLOSE);
        context.write(answer(response), promise);
      } else {
        context.write(message, promise);
      }
    }

    private static FullHttpResponse answer(FullHttpResponse bare) {
      ByteBuf body =
          Unpooled.wrappedBuffer(ContractJson.write(Problems.ofStatus(bare.status().code())));
      FullHttpResponse answer =
          new DefaultFullHttpResponse(bare.protocolVersion(), bare.status(), body);
      StandingHeaders.GENERAL.forEach((name, value) -> answer.headers().set(name, value));
      answer.headers().set(HttpHeaderNames.CONTENT_TYPE, Problems.MEDIA_TYPE);
      answer.headers().set(HttpHeaderNames.CONTENT_LENGTH, body.readableBytes());
      answer.headers().set(HttpHeaderNames.CONNECTION, HttpHeaderValues.CLOSE);
      return answer;
    }
  }
}
