package slopewright.mutation;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

import javax.xml.parsers.DocumentBuilderFactory;

import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Reads the report of one bundle: the share that was noticed, and a line for each change that was not. */
final class Survivors {

    private static final List<String> NOTICED = List.of("KILLED", "TIMED_OUT", "MEMORY_ERROR", "RUN_ERROR");

    private Survivors() {
    }

    /** Prints the share of each package and writes the survivors, those that are explained apart from the others. */
    static void tell(Path explained, Path report) throws Exception {
        List<String[]> reasons = new ArrayList<>();
        if (Files.exists(explained)) {
            Files.readAllLines(explained).stream().filter(line -> !line.startsWith("#")).forEach(line -> reasons.add(line.split("\t")));
        }
        Map<String, int[]> counts = new TreeMap<>();
        List<String> open = new ArrayList<>();
        List<String> known = new ArrayList<>();
        NodeList all = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(report.resolve("mutations.xml").toFile())
                .getElementsByTagName("mutation");
        for (int i = 0; i < all.getLength(); i++) {
            Element change = (Element) all.item(i);
            String type = text(change, "mutatedClass");
            int[] count = counts.computeIfAbsent(type.substring(0, type.lastIndexOf('.')), key -> new int[3]);
            count[0]++;
            if (NOTICED.contains(change.getAttribute("status"))) {
                count[1]++;
                continue;
            }
            String line = String.join("\t", type, text(change, "mutatedMethod"), text(change, "lineNumber"), text(change, "description"),
                    change.getAttribute("status"));
            String source = source(explained.resolveSibling("../../bundles/core").normalize(), type, text(change, "lineNumber"));
            String reason = reasons.stream().filter(row -> row[0].equals(type) && row[1].equals(text(change, "mutatedMethod"))
                    && isAbout(row[2], text(change, "description"), source)).map(row -> row[3]).findFirst().orElse("");
            if (reason.isEmpty()) {
                open.add(line);
            } else {
                count[2]++;
                known.add(line + "\t" + reason);
            }
        }
        counts.forEach((name, count) -> print(name, count));
        print("all", counts.values().stream().reduce(new int[3], (a, b) -> new int[] {a[0] + b[0], a[1] + b[1], a[2] + b[2]}));
        write(report.resolve("survivors.txt"), open);
        write(report.resolve("explained.txt"), known);
    }

    /** Returns whether a description holds what a row says, and its line of the source what the row says behind {@code @}. */
    private static boolean isAbout(String said, String description, String source) {
        int at = said.indexOf('@');
        return at < 0 ? description.contains(said) : description.contains(said.substring(0, at).strip())
                && source.contains(said.substring(at + 1).strip());
    }

    private static String source(Path core, String type, String line) throws IOException {
        String top = type.contains("$") ? type.substring(0, type.indexOf('$')) : type;
        try (DirectoryStream<Path> bundles = Files.newDirectoryStream(core)) {
            for (Path bundle : bundles) {
                Path file = bundle.resolve("src").resolve(top.replace('.', '/') + ".java");
                if (Files.exists(file)) {
                    return Files.readAllLines(file).get(Integer.parseInt(line) - 1);
                }
            }
        }
        return "";
    }

    private static void print(String name, int[] count) {
        System.out.printf(Locale.ROOT, "%-48s %5d changes %5d noticed %5.1f %% %4d explained%n", name, count[0], count[1],
                100.0 * count[1] / count[0], count[2]);
    }

    private static void write(Path file, List<String> lines) throws IOException {
        Files.write(file, lines);
    }

    private static String text(Element element, String name) {
        return element.getElementsByTagName(name).item(0).getTextContent();
    }
}
