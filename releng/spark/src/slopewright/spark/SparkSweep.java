package slopewright.spark;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

import org.apache.spark.SparkConf;
import org.apache.spark.SparkFiles;
import org.apache.spark.api.java.JavaSparkContext;

import slopewright.headless.Main;

/**
 * Runs {@code sweep} in parts on the machines of a cluster, or in local mode where nothing else is configured: each part is the command
 * itself with {@code --part}, so that the table is that of one machine to the last bit. Files that the words name are sent along; a folder of
 * projects must be there on every machine. The table goes to the standard output, as CSV.
 */
public final class SparkSweep {

    /** How many parts there are; where it is not set as many as there are processors. */
    private static final String PARTS = "spark.slopewright.parts";
    private static final int USAGE = 2;
    private static final int FINDINGS = 1;
    private static final int NOTHING_EVALUATED = 5;

    private SparkSweep() {
    }

    /** Runs with the words that {@code sweep} takes, but for {@code --csv}, {@code --json} and {@code --part}. */
    public static void main(String[] words) {
        System.exit(run(words));
    }

    private static int run(String[] words) {
        for (String word : words) {
            if (Set.of("--csv", "--json", "--part").contains(word)) {
                System.err.println("the job writes a table of all parts itself; leave " + word + " away");
                return USAGE;
            }
        }
        SparkConf conf = new SparkConf().setAppName("slopewright sweep").setIfMissing("spark.master", "local[*]");
        try (JavaSparkContext spark = new JavaSparkContext(conf)) {
            spark.setLogLevel("WARN");
            int parts = conf.getInt(PARTS, spark.defaultParallelism());
            send(words, spark);
            List<String> all = List.of(words);
            List<Integer> numbers = IntStream.rangeClosed(1, parts).boxed().toList();
            return together(spark.parallelize(numbers, parts).map(number -> part(all, number, parts)).collect());
        }
    }

    /** Sends the files that are named to every machine. */
    private static void send(String[] words, JavaSparkContext spark) {
        Set<String> names = new HashSet<>();
        for (String word : words) {
            if (isFile(word)) {
                if (!names.add(name(word))) {
                    throw new IllegalArgumentException("two files are named " + name(word) + "; rename one");
                }
                spark.addFile(Path.of(word).toAbsolutePath().toString());
            }
        }
    }

    private static String name(String word) {
        return Path.of(word).getFileName().toString();
    }

    private static boolean isFile(String word) {
        return isName(word) && Files.isRegularFile(Path.of(word));
    }

    private static boolean isName(String word) {
        try {
            return !word.startsWith("-") && Path.of(word).getFileName() != null;
        } catch (InvalidPathException e) {
            return false;
        }
    }

    /** Works on one part, on whatever machine. Returns the exit code, what is printed and what is said; files have the names they were given. */
    private static String[] part(List<String> words, int number, int parts) {
        List<String> here = new ArrayList<>(List.of("sweep"));
        Map<String, String> given = new LinkedHashMap<>();
        for (String word : words) {
            Path sent = isName(word) ? Path.of(SparkFiles.get(name(word))) : null;
            here.add(sent != null && Files.isRegularFile(sent) ? sent.toString() : word);
            given.put(here.get(here.size() - 1), word);
        }
        here.addAll(List.of("--csv", "--part", number + "/" + parts));
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        int code = Main.run(here.toArray(String[]::new), new PrintStream(printed, true, StandardCharsets.UTF_8),
                new PrintStream(said, true, StandardCharsets.UTF_8), new ByteArrayInputStream(new byte[0]));
        return new String[] {String.valueOf(code), asGiven(printed, given), asGiven(said, given)};
    }

    private static String asGiven(ByteArrayOutputStream bytes, Map<String, String> given) {
        String text = bytes.toString(StandardCharsets.UTF_8);
        for (Map.Entry<String, String> file : given.entrySet()) {
            text = text.replace(file.getKey(), file.getValue());
        }
        return text;
    }

    /** Prints the parts one after the other under one header; a part without a row says nothing of the whole. */
    private static int together(List<String[]> parts) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        boolean headed = false;
        boolean found = false;
        boolean evaluated = false;
        for (String[] part : parts) {
            int code = Integer.parseInt(part[0]);
            if (code != 0 && code != FINDINGS && code != NOTHING_EVALUATED) {
                System.err.print(part[2]);
                return code;
            }
            int rows = part[1].indexOf('\n') + 1;
            out.print(headed ? part[1].substring(rows) : part[1]);
            headed = true;
            if (rows < part[1].length()) {
                found |= code != 0;
                evaluated |= code != NOTHING_EVALUATED;
            }
        }
        return !evaluated ? NOTHING_EVALUATED : found ? FINDINGS : 0;
    }
}
