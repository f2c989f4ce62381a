package slopewright.fuzz;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Feeds broken inputs, one after the other, and counts how they ended. */
public final class Fuzz {

    private static final long LONGEST_NS = 60_000_000_000L;

    private final Path work;
    private final Sources sources;
    private final Set<String> told = new HashSet<>();
    private final Map<Path, byte[]> read = new HashMap<>();
    private int faults;
    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private volatile long begun = Long.MAX_VALUE;
    private volatile Path current;

    private Fuzz(Path root, Path work) throws Exception {
        this.work = work;
        sources = Sources.of(root, Files.createDirectories(work.resolve("corpus")));
        Files.createDirectories(work.resolve("failures"));
        Files.createDirectories(work.resolve("now"));
    }

    /** Words: root of the tree, folder to work in, how many, seed, kinds (all where none is named). */
    public static void main(String[] words) throws Exception {
        Fuzz fuzz = new Fuzz(Path.of(words[0]), Path.of(words[1]));
        fuzz.watch();
        int number = Integer.parseInt(words[2]);
        long seed = Long.parseLong(words[3]);
        List<String> wanted = new ArrayList<>(Arrays.asList(words).subList(4, words.length));
        boolean all = wanted.isEmpty();
        for (Kind kind : Kind.values()) {
            if (all || wanted.contains(kind.name().toLowerCase(Locale.ROOT).replace('_', '-'))) {
                fuzz.feed(kind, number, seed);
            }
        }
        System.out.println(fuzz.faults == 0 ? "no fault" : fuzz.faults + " faults");
        System.exit(fuzz.faults == 0 ? 0 : 1);
    }

    private void feed(Kind kind, int number, long seed) throws Exception {
        int refused = 0;
        int before = faults;
        long start = System.nanoTime();
        List<Path> corpus = sources.of(kind.corpus());
        for (int i = 0; i < number; i++) {
            Breaker breaker = new Breaker(seed * 1_000_003L + kind.ordinal() * 31L + i * 977L);
            Path whole = breaker.one(corpus);
            byte[] bytes = bytes(whole);
            boolean isBinary = List.of("picture", "swpoints", "shapes").contains(kind.corpus())
                    || List.of(".kmz", ".tif", ".xlsx", ".hgt", ".gpkg", ".las", ".sqlite").stream().anyMatch(whole.toString()::endsWith);
            byte[] broken = kind.isWhole() ? bytes : isBinary ? breaker.bytes(bytes) : breaker.text(bytes, bytes(breaker.one(corpus)));
            Path input = Files.write(work.resolve("now").resolve("input-" + whole.getFileName()), broken);
            refused += feed(kind, input, breaker, i) ? 1 : 0;
        }
        System.out.printf(Locale.ROOT, "%-15s %8d inputs, %8d refused, %8d projects checked, %4d faults, %6.0f s%n",
                kind.name().toLowerCase(Locale.ROOT), number, refused, Kind.checked(), faults - before, (System.nanoTime() - start) / 1e9);
    }

    private byte[] bytes(Path file) throws Exception {
        byte[] bytes = read.get(file);
        if (bytes == null) {
            bytes = Files.readAllBytes(file);
            read.put(file, bytes);
        }
        return bytes;
    }

    private boolean feed(Kind kind, Path input, Breaker breaker, int number) throws Exception {
        current = input;
        begun = threads.getCurrentThreadCpuTime();
        try {
            kind.feed(input, sources, breaker);
        } catch (Throwable e) {
            faults++;
            StringWriter trace = new StringWriter();
            e.printStackTrace(new PrintWriter(trace, true));
            Path kept = work.resolve("failures").resolve(kind + "-" + number + "-" + input.getFileName());
            Files.write(kept, Files.readAllBytes(input));
            String what = String.valueOf(e.getMessage()).replaceAll("[0-9]+", "0");
            if (told.add(what.substring(0, Math.min(160, what.length())))) {
                System.out.println(kept + ": " + (e instanceof IllegalStateException ? e.getMessage() : trace));
            }
        } finally {
            begun = Long.MAX_VALUE;
        }
        return Kind.wasRefused();
    }

    /** Ends the run where one input takes longer than a minute of processor time, and says where it is. */
    private void watch() {
        Thread feeding = Thread.currentThread();
        Thread watch = new Thread(() -> {
            while (true) {
                try {
                    Thread.sleep(1000);
                } catch (InterruptedException e) {
                    return;
                }
                long since = begun;
                if (since != Long.MAX_VALUE && threads.getThreadCpuTime(feeding.getId()) - since > LONGEST_NS) {
                    System.out.println(current + " does not end:");
                    Arrays.stream(feeding.getStackTrace()).limit(40).forEach(frame -> System.out.println("    at " + frame));
                    System.exit(1);
                }
            }
        });
        watch.setDaemon(true);
        watch.start();
    }
}
