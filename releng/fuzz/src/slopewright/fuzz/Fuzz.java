package slopewright.fuzz;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
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
    private static final int LARGE = 1 << 20;
    private static final int LARGE_ONCE_IN = 20;
    private static final List<String> BINARY = List.of(".kmz", ".tif", ".xlsx", ".hgt", ".gpkg", ".las", ".sqlite");

    private final Path work;
    private final Path now;
    private final Sources sources;
    private final Set<String> told = new HashSet<>();
    private final Map<Path, byte[]> read = new HashMap<>();
    private final Map<Path, String> texts = new HashMap<>();
    private int faults;
    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private volatile long begun = Long.MAX_VALUE;
    private volatile Path current;

    private Fuzz(Path root, Path work, Path now) throws Exception {
        this.work = work;
        this.now = Files.createDirectories(now);
        sources = Sources.of(root, Files.createDirectories(work.resolve("corpus")));
        Files.createDirectories(work.resolve("failures"));
    }

    /**
     * Words: root of the tree, folder that keeps, folder for what is fed (in memory: a drive takes milliseconds to write a file over), how
     * many, seed, kinds (all where none is named).
     */
    public static void main(String[] words) throws Exception {
        Fuzz fuzz = new Fuzz(Path.of(words[0]), Path.of(words[1]), Path.of(words[2]));
        fuzz.watch();
        int number = Integer.parseInt(words[3]);
        long seed = Long.parseLong(words[4]);
        List<String> wanted = new ArrayList<>(Arrays.asList(words).subList(5, words.length));
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
        long used = threads.getCurrentThreadCpuTime();
        List<Path> corpus = sources.of(kind.corpus());
        for (int i = 0; i < number; i++) {
            Breaker breaker = new Breaker(seed * 1_000_003L + kind.ordinal() * 31L + i * 977L);
            Path whole = breaker.one(corpus);
            if (bytes(whole).length > LARGE && breaker.upTo(LARGE_ONCE_IN) > 0) {
                whole = breaker.one(corpus);
            }
            Path input = Files.write(now.resolve("input-" + whole.getFileName()), broken(kind, whole, breaker, corpus));
            refused += feed(kind, input, breaker, i) ? 1 : 0;
        }
        System.out.printf(Locale.ROOT, "%-15s %8d inputs, %8d refused, %8d projects checked, %4d faults, %6.0f s, %6.0f s of a processor%n",
                kind.name().toLowerCase(Locale.ROOT), number, refused, Kind.checked(), faults - before, (System.nanoTime() - start) / 1e9,
                (threads.getCurrentThreadCpuTime() - used) / 1e9);
    }

    private byte[] broken(Kind kind, Path whole, Breaker breaker, List<Path> corpus) throws Exception {
        if (kind.isWhole()) {
            return bytes(whole);
        }
        if (isBinary(kind, whole)) {
            return breaker.bytes(bytes(whole));
        }
        List<Path> others = corpus.stream().filter(file -> !isBinary(kind, file)).toList();
        return breaker.text(text(whole), text(breaker.one(others)));
    }

    private static boolean isBinary(Kind kind, Path file) {
        return List.of("picture", "swpoints", "shapes").contains(kind.corpus()) || BINARY.stream().anyMatch(file.toString()::endsWith);
    }

    private String text(Path file) throws Exception {
        String text = texts.get(file);
        if (text == null) {
            text = new String(bytes(file), StandardCharsets.UTF_8);
            texts.put(file, text);
        }
        return text;
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
