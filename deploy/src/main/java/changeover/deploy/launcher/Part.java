package changeover.deploy.launcher;

/** One of the three processes that make an installation. */
interface Part {
    String name();

    /** Starts it and returns when it answers. */
    void start() throws Exception;

    boolean alive();

    /** Stops it, gently at first; returns when it is gone. */
    void stop();
}
