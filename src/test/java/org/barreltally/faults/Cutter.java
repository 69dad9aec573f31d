package org.barreltally.faults;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Stands between askers and the program, and cuts connections in the middle of what they say. */
final class Cutter implements AutoCloseable {

  private final ServerSocket door;
  private final int behind;
  private final Random random;
  private final ExecutorService hands = Executors.newCachedThreadPool();

  Cutter(int behind, long seed) throws IOException {
    this.behind = behind;
    random = new Random(seed);
    door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    hands.execute(this::open);
  }

  int port() {
    return door.getLocalPort();
  }

  private void open() {
    while (!door.isClosed()) {
      try {
        Socket outside = door.accept();
        Socket inside = new Socket(InetAddress.getLoopbackAddress(), behind);
        int cut = random.nextInt(3); // the request, the answer, or neither
        hands.execute(() -> carry(outside, inside, cut == 0 ? random.nextInt(900) : -1));
        hands.execute(() -> carry(inside, outside, cut == 1 ? random.nextInt(1_500) : -1));
      } catch (IOException closed) {
        // the next one
      }
    }
  }

  private static void carry(Socket from, Socket to, int bytes) {
    try (from;
        to;
        InputStream in = from.getInputStream();
        OutputStream out = to.getOutputStream()) {
      byte[] some = new byte[4_096];
      int left = bytes;
      for (int read = in.read(some); read >= 0; read = in.read(some)) {
        if (bytes >= 0 && read >= left) {
          out.write(some, 0, left);
          out.flush();
          return;
        }
        left -= bytes >= 0 ? read : 0;
        out.write(some, 0, read);
        out.flush();
      }
    } catch (IOException cut) {
      // that is what it is for
    }
  }

  @Override
  public void close() throws IOException {
    door.close();
    hands.shutdownNow();
  }
}
