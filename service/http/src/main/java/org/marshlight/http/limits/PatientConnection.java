package org.marshlight.http.limits;

import io.netty.channel.Channel;
import io.netty.channel.ChannelDuplexHandler;
import io.netty.channel.ChannelHandlerContext;
import io.netty.channel.ChannelOutboundBuffer;
import io.netty.channel.ChannelPromise;
import io.netty.handler.codec.http.HttpResponse;
import io.netty.handler.codec.http.HttpStatusClass;
import io.netty.handler.codec.http.LastHttpContent;
import io.netty.handler.timeout.IdleStateEvent;

/**
 * Keeps the server's timer for idle connections from ending one on which a request is being worked:
 * an answer may take longer than any client should be silent. The timer still ends connections that
 * wait for a request or for the rest of one, and those whose client does not take what is sent.
 *
 * <p>Stands between the timer and whoever obeys it, on the connection's own thread.
 */
public final class PatientConnection extends ChannelDuplexHandler {

  private int underWay;
  private boolean interim;

  @Override
  public void channelRead(ChannelHandlerContext context, Object message) {
    if (message instanceof LastHttpContent) {
      underWay++;
    }
    context.fireChannelRead(message);
  }

  @Override
  public void write(ChannelHandlerContext context, Object message, ChannelPromise promise) {
    if (message instanceof HttpResponse response) {
      interim = response.status().codeClass() == HttpStatusClass.INFORMATIONAL;
    }
    if (message instanceof LastHttpContent && !interim && underWay > 0) {
      underWay--;
    }
    context.write(message, promise);
  }

  @Override
  public void userEventTriggered(ChannelHandlerContext context, Object event) {
    if (!(event instanceof IdleStateEvent && underWay > 0 && allTaken(context.channel()))) {
      context.fireUserEventTriggered(event);
    }
  }

  /** Whether everything that was written has left for the client. */
  private static boolean allTaken(Channel channel) {
    ChannelOutboundBuffer waiting = channel.unsafe().outboundBuffer();
    return waiting != null && waiting.totalPendingWriteBytes() == 0;
  }
}
