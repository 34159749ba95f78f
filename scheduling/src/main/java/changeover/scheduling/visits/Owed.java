package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;

/**
 * A promise with its place in the list it came in, so that a visit's tasks keep that order.
 *
 * @param place from nought
 */
record Owed(int place, Promise promise) {

    Window window() {
        return promise.window();
    }
}
