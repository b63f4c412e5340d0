package org.drillsheaf.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** The network between a desk and its server: can be cut and mended. */
public final class Wire implements AutoCloseable {
    private final ServerSocket door;
    private final int server;
    private final List<Socket> open = new CopyOnWriteArrayList<>();
    private volatile boolean isCut;

    /** @param server port of the server on this machine */
    public Wire(int server) throws IOException {
        this.server = server;
        this.door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        thread(this::take);
    }

    /** Where a desk finds the server. */
    public int port() {
        return door.getLocalPort();
    }

    /** Nothing gets through any more. */
    public void cut() throws IOException {
        isCut = true;
        for (Socket socket : open) {
            socket.close();
        }
        open.clear();
    }

    public void mend() {
        isCut = false;
    }

    private void take() {
        try {
            while (true) {
                Socket desk = door.accept();
                if (isCut) {
                    desk.close();
                    continue;
                }
                Socket far = new Socket(InetAddress.getLoopbackAddress(), server);
                open.add(desk);
                open.add(far);
                thread(() -> pour(desk, far));
                thread(() -> pour(far, desk));
            }
        } catch (IOException e) {
            // The test is over.
        }
    }

    private static void pour(Socket from, Socket to) {
        try (from;
                to) {
            InputStream in = from.getInputStream();
            OutputStream out = to.getOutputStream();
            byte[] bytes = new byte[8_192];
            for (int count = in.read(bytes); count >= 0; count = in.read(bytes)) {
                out.write(bytes, 0, count);
                out.flush();
            }
        } catch (IOException e) {
            // Cut.
        }
    }

    private static void thread(Runnable work) {
        Thread thread = new Thread(work, "wire");
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void close() throws IOException {
        door.close();
        cut();
    }
}
