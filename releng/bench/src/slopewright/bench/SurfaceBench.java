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

/**
 * Many points against one surface: from memory, from a file, and a plain read of both. Prints the best of some runs, by the clock and by what
 * the processors spent together.
 */
public final class SurfaceBench {

    private static final int RUN = 1 << 13;
    private static final int TIMES = 7;
    private static final ProtectionSurface SURFACE = new ProtectionSurface(-60, 0, 300, 0.15, 15000, 1.93, 2);

    private SurfaceBench() {
    }

    /** Runs with the name of a scratch file and a number of points. */
    public static void main(String[] args) throws IOException {
        Path file = Path.of(args[0]);
        int count = Integer.parseInt(args[1]);
        double[][] points = points(count);
        write(file, points);
        SurfaceSweep sweep = new SurfaceSweep(SURFACE);
        int runs = (count + RUN - 1) / RUN;
        SurfaceSweep.Tally[] found = new SurfaceSweep.Tally[1];
        Took memory = Took.best(TIMES, () -> found[0] = IntStream.range(0, runs).parallel()
                .mapToObj(run -> sweep.tally(points[0], points[1], points[2], run * RUN, Math.min(count, (run + 1) * RUN)))
                .reduce(SurfaceSweep.Tally.NONE, SurfaceSweep.Tally::with));
        System.out.printf("memory %s%n", memory);
        double[] sum = new double[1];
        System.out.printf("bus %s%n", Took.best(TIMES, () -> sum[0] = IntStream.range(0, runs).parallel()
                .mapToDouble(run -> PlainRead.sum(points, run * RUN, Math.min(count, (run + 1) * RUN))).sum()));
        System.out.printf("worst %d%n", found[0].worst());
        System.out.printf("file %s%n", Took.best(TIMES, () -> fromFile(file, count, sweep)));
        System.out.printf("read %s%n", Took.best(TIMES, () -> PlainRead.file(file)));
        System.out.printf("sum %.1f%n", sum[0]);
    }

    private static double[][] points(int count) {
        SplittableRandom random = new SplittableRandom(20260601);
        double[][] points = new double[3][count];
        for (int i = 0; i < count; i++) {
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
                for (int from = 0; from < column.length; from += RUN) {
                    int count = Math.min(RUN, column.length - from);
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

    private static void fromFile(Path file, int all, SurfaceSweep sweep) {
        long column = (long) all * Double.BYTES;
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            int runs = (all + RUN - 1) / RUN;
            ThreadLocal<ByteBuffer> bytes = ThreadLocal
                    .withInitial(() -> ByteBuffer.allocateDirect(RUN * Double.BYTES).order(ByteOrder.LITTLE_ENDIAN));
            ThreadLocal<double[][]> scratch = ThreadLocal.withInitial(() -> new double[3][RUN]);
            IntStream.range(0, runs).parallel().forEach(run -> {
                int from = run * RUN;
                int count = Math.min(RUN, all - from);
                double[][] own = scratch.get();
                for (int i = 0; i < 3; i++) {
                    read(channel, bytes.get().clear().limit(count * Double.BYTES), i * column + (long) from * Double.BYTES);
                    bytes.get().flip().order(ByteOrder.LITTLE_ENDIAN).asDoubleBuffer().get(own[i], 0, count);
                }
                sweep.tally(own[0], own[1], own[2], 0, count);
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
}
