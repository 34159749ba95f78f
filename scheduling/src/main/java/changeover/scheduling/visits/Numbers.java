package changeover.scheduling.visits;

import java.util.Arrays;

/** A column of whole numbers that grows. */
final class Numbers {

    private int[] numbers = new int[1024];
    private int size;

    void add(int number) {
        if (size == numbers.length) {
            numbers = Arrays.copyOf(numbers, size * 2);
        }
        numbers[size++] = number;
    }

    int size() {
        return size;
    }

    int[] toArray() {
        return Arrays.copyOf(numbers, size);
    }
}
