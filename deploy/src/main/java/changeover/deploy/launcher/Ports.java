package changeover.deploy.launcher;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;

/** Which ports an installation listens on: the pages' as asked, the two others free ones that are remembered. */
final class Ports {
    private Ports() {}

    /** @throws CannotStart when somebody else listens there */
    static void requireFree(String address, int port) {
        if (!free(address, port)) {
            throw new CannotStart("Port " + port + " is taken on " + address + "; give another with --port.");
        }
    }

    /** The port that the folder remembers under the name, or a free one when it is taken or was never chosen. */
    static int remembered(DataFolder folder, String name, String address) {
        int port = Integer.parseInt(folder.settings().getProperty(name, "0"));
        if (port == 0 || !free(address, port)) {
            port = anyFree();
            folder.remember(name, Integer.toString(port));
        }
        return port;
    }

    private static boolean free(String address, int port) {
        try (ServerSocket socket = new ServerSocket()) {
            socket.setReuseAddress(true);
            socket.bind(new InetSocketAddress(InetAddress.getByName(address), port));
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    private static int anyFree() {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        } catch (IOException e) {
            throw new CannotStart("No port is free on this machine.", e);
        }
    }
}
