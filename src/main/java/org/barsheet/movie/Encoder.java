package org.barsheet.movie;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

/**
 * Hands frames to ffmpeg as they are drawn. While it takes one, the next is drawn; no more than two
 * are ever kept.
 */
final class Encoder implements FrameSink, AutoCloseable {

  private static final int BYTES_PER_PIXEL = 4;
  private static final int BUFFERS = 2;

  private final Process ffmpeg;
  private final OutputStream frames;
  private final LastWords lastWords;
  private final ExecutorService hand =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "frames to ffmpeg");
            thread.setDaemon(true);
            return thread;
          });
  private final byte[][] buffers;
  private final Deque<Future<?>> underWay = new ArrayDeque<>();
  private int next;

  /**
   * Starts ffmpeg.
   *
   * @param arguments that read raw frames from its standard input
   * @param pixels of a frame
   */
  Encoder(Ffmpeg program, List<String> arguments, int pixels) throws IOException {
    this.ffmpeg = program.start(arguments);
    this.frames = ffmpeg.getOutputStream();
    this.lastWords = new LastWords(ffmpeg.getErrorStream());
    this.buffers = new byte[BUFFERS][pixels * BYTES_PER_PIXEL];
    ffmpeg.getInputStream().close();
  }

  @Override
  public void take(BufferedImage image, long frame) throws IOException {
    if (underWay.size() == BUFFERS) {
      await(underWay.removeFirst());
    }
    byte[] buffer = buffers[next];
    next = (next + 1) % BUFFERS;
    int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    ByteBuffer.wrap(buffer).order(ByteOrder.LITTLE_ENDIAN).asIntBuffer().put(pixels);
    underWay.addLast(
        hand.submit(
            () -> {
              frames.write(buffer);
              return buffer;
            }));
  }

  private void await(Future<?> written) throws IOException {
    try {
      written.get();
    } catch (ExecutionException refused) {
      throw stopped();
    } catch (InterruptedException told) {
      Thread.currentThread().interrupt();
      throw new IOException("stopped", told);
    }
  }

  /** Waits until ffmpeg has written all of it. */
  void finish() throws IOException {
    while (!underWay.isEmpty()) {
      await(underWay.removeFirst());
    }
    try {
      frames.close();
    } catch (IOException gone) {
      throw stopped();
    }
    if (exitValue() != 0) {
      throw stopped();
    }
  }

  private int exitValue() throws IOException {
    try {
      return ffmpeg.waitFor();
    } catch (InterruptedException told) {
      Thread.currentThread().interrupt();
      throw new IOException("stopped", told);
    }
  }

  private IOException stopped() {
    String told = lastWords.told();
    return new IOException("ffmpeg stopped" + (told.isEmpty() ? "" : ": " + told));
  }

  /** Ends ffmpeg, if it has not ended. */
  @Override
  public void close() {
    hand.shutdownNow();
    ffmpeg.destroyForcibly();
    try {
      ffmpeg.waitFor(10, TimeUnit.SECONDS);
    } catch (InterruptedException told) {
      Thread.currentThread().interrupt();
    }
  }
}
