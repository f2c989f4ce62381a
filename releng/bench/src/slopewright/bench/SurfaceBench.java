package slopewright.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

import slopewright.geometry.ProtectionSurface;
import slopewright.geometry.SurfaceSweep;

/** Many points against one surface: from memory, from a file, and a plain read of that file. Prints the best of five. */
public final class SurfaceBench {

    private static final int COUNT = 20_000_000;
    private static final int RUN = 1 << 13;
    private static final int TIMES = 5;
    private static final ProtectionSurface SURFACE = new ProtectionSurface(-60, 0, 300, 0.15, 15000, 1.93, 2);

    private SurfaceBench() {
    }

    /** Runs with the name of a scratch file. */
    public static void main(String[] args) throws IOException {
        Path file = Path.of(args[0]);
        double[][] points = points();
        write(file, points);
        SurfaceSweep sweep = new SurfaceSweep(SURFACE);
        double[] excess = new double[COUNT];
        int runs = (COUNT + RUN - 1) / RUN;
        double memory = best(() -> IntStream.range(0, runs).parallel()
                .forEach(run -> sweep.sweep(points[0], points[1], points[2], run * RUN, Math.min(COUNT, (run + 1) * RUN), excess)));
        System.out.printf("memory %.4f s%n", memory);
        System.out.printf("worst %d%n", sweep.sweep(points[0], points[1], points[2], 0, COUNT, excess));
        System.out.printf("file %.4f s%n", best(() -> fromFile(file, sweep)));
        System.out.printf("read %.4f s%n", best(() -> plainRead(file)));
    }

    private static double[][] points() {
        SplittableRandom random = new SplittableRandom(20260601);
        double[][] points = new double[3][COUNT];
        for (int i = 0; i < COUNT; i++) {
            points[0][i] = -random.nextDouble() * 17_000 + 500;
            points[1][i] = (random.nextDouble() - 0.5) * 6000;
            points[2][i] = random.nextDouble() * 300;
        }
        return points;
    }

    private static void write(Path file, double[][] points) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING,
                StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.allocate(RUN * Double.BYTES).order(ByteOrder.LITTLE_ENDIAN);
            for (double[] column : points) {
                for (int from = 0; from < COUNT; from += RUN) {
                    int count = Math.min(RUN, COUNT - from);
                    buffer.clear();
                    buffer.asDoubleBuffer().put(column, from, count);
                    buffer.limit(count * Double.BYTES);
                    while (buffer.hasRemaining()) {
                        channel.write(buffer);
                    }
                }
            }
        }
    }

    private static void fromFile(Path file, SurfaceSweep sweep) {
        long column = (long) COUNT * Double.BYTES;
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            int runs = (COUNT + RUN - 1) / RUN;
            ThreadLocal<ByteBuffer> bytes = ThreadLocal
                    .withInitial(() -> ByteBuffer.allocateDirect(RUN * Double.BYTES).order(ByteOrder.LITTLE_ENDIAN));
            ThreadLocal<double[][]> scratch = ThreadLocal.withInitial(() -> new double[4][RUN]);
            IntStream.range(0, runs).parallel().forEach(run -> {
                int from = run * RUN;
                int count = Math.min(RUN, COUNT - from);
                double[][] own = scratch.get();
                for (int i = 0; i < 3; i++) {
                    read(channel, bytes.get().clear().limit(count * Double.BYTES), i * column + (long) from * Double.BYTES);
                    bytes.get().flip().order(ByteOrder.LITTLE_ENDIAN).asDoubleBuffer().get(own[i], 0, count);
                }
                sweep.sweep(own[0], own[1], own[2], 0, count, own[3]);
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void read(FileChannel channel, ByteBuffer buffer, long from) {
        try {
            long at = from;
            while (buffer.hasRemaining()) {
                at += channel.read(buffer, at);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void plainRead(Path file) {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            ByteBuffer buffer = ByteBuffer.allocateDirect(1 << 20);
            while (channel.read(buffer) >= 0) {
                buffer.clear();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static double best(Runnable work) {
        double best = Double.MAX_VALUE;
        for (int i = 0; i < TIMES; i++) {
            long begun = System.nanoTime();
            work.run();
            best = Math.min(best, (System.nanoTime() - begun) / 1e9);
        }
        return best;
    }
}
