package changeover.deploy.launcher;

/** Where a part listens, and the host under which browsers reach it. */
record Address(String listen, String host, int port) {
    /** Everything of an installation on one machine is reached under its listening address, unless that means all of them. */
    static Address of(String listen, int port) {
        boolean everywhere = listen.equals("0.0.0.0") || listen.equals("::");
        return new Address(listen, everywhere ? ownName() : listen, port);
    }

    String url() {
        return "http://" + host + ":" + port;
    }

    private static String ownName() {
        try {
            return java.net.InetAddress.getLocalHost().getHostName();
        } catch (java.net.UnknownHostException e) {
            throw new CannotStart("This machine does not know its own name; give --listen an address of it.", e);
        }
    }
}
