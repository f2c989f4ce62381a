package slopewright.bench;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;

/** What reading alone takes: every number or byte is looked at, and next to nothing done with it. */
final class PlainRead {
    private static final int BUFFER = 1 << 20;

    private PlainRead() {
    }

    /** Returns the sum of a part of columns, by four sums, so that none waits for another. */
    static double sum(double[][] columns, int from, int to) {
        double all = 0;
        for (double[] column : columns) {
            double first = 0;
            double second = 0;
            double third = 0;
            double fourth = 0;
            int i = from;
            for (; i + 3 < to; i += 4) {
                first += column[i];
                second += column[i + 1];
                third += column[i + 2];
                fourth += column[i + 3];
            }
            for (; i < to; i++) {
                all += column[i];
            }
            all += first + second + third + fourth;
        }
        return all;
    }

    /** Reads a file from its beginning to its end. */
    static void file(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file)) {
            ByteBuffer buffer = ByteBuffer.allocateDirect(BUFFER);
            while (channel.read(buffer) >= 0) {
                buffer.clear();
            }
        }
    }
}
