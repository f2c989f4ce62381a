package slopewright.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

/**
 * Whatever opens a file to read it is fed with broken ones by `releng/fuzz`: each class that does is listed with the kinds of inputs that
 * reach it, or with the reason why none is needed. That there is a file of every format of surveys, the fuzzer looks itself when it starts.
 */
class FuzzedReadersTest {

    private static final Pattern READING = Pattern.compile("Files\\.(newBufferedReader|readAllBytes|readString|lines|readAllLines|"
            + "newInputStream|newByteChannel)\\(|new (FileInputStream|FileReader|RandomAccessFile|ZipFile)\\(|FileChannel\\.open\\(|"
            + "createImageInputStream\\(");
    private static final Pattern KIND = Pattern.compile("(?m)^ {4}([A-Z][A-Z_]+)\\(\"");

    /** What reads files of other people, and the kinds of inputs that reach it. */
    private static final Map<String, Set<String>> FED = Map.ofEntries(
            Map.entry("ProjectFile.java", Set.of("PROJECT", "SMALL", "OUTPUTS", "SMALL_OUTPUTS")),
            Map.entry("HeadStart.java", Set.of("PROJECT", "SMALL")),
            Map.entry("SurveyInput.java", Set.of("SURVEY", "SHAPES", "OBSTACLES", "GROUND_LEVELS", "OBSTACLE_BLOCK")),
            Map.entry("TablePreview.java", Set.of("TABLE_PREVIEW")),
            Map.entry("RunwayData.java", Set.of("RUNWAYS")),
            Map.entry("EndFile.java", Set.of("ENDS")),
            Map.entry("PointFile.java", Set.of("POINT_TABLE")),
            Map.entry("SurveyPoints.java", Set.of("POINTS")),
            Map.entry("TemplateFolder.java", Set.of("TEMPLATE")),
            Map.entry("ValueBook.java", Set.of("BOOK")),
            Map.entry("OwnRuleSetFolder.java", Set.of("RULE_SET")),
            Map.entry("PictureFile.java", Set.of("PICTURE")));

    /** What opens a file and takes nothing from it that could be broken, and why. */
    private static final Map<String, String> OTHERS = Map.ofEntries(
            Map.entry("AtomicFile.java", "writes; opens a folder to make it last"),
            Map.entry("Beside.java", "writes; copies bytes as they are"),
            Map.entry("LockedFile.java", "a lock"),
            Map.entry("ProjectStamp.java", "takes the SHA-256 of bytes"),
            Map.entry("Reviews.java", "takes the SHA-256 of bytes"),
            Map.entry("ImportCommand.java", "compares bytes that it would write, and looks for a name in a project"),
            Map.entry("ImportDialog.java", "compares bytes that it would write"),
            Map.entry("FileDigest.java", "takes the SHA-256 of bytes"),
            Map.entry("ProjectPicture.java", "copies bytes as they are"),
            Map.entry("SheetFile.java", "a workbook that it wrote itself"),
            Map.entry("RecoveryFile.java", "a project, read by ProjectFile, with a remark behind it"),
            Map.entry("ProjectClaim.java", "a few letters that are shown, whatever they are"));

    @Test
    void everyReaderIsFed() {
        Map<String, String> found = new TreeMap<>();
        SourceTree.bundles().stream().filter(bundle -> !SourceTree.relative(bundle.folder()).contains("/tests/"))
                .flatMap(bundle -> SourceTree.files(bundle.folder().resolve("src"), ".java").stream())
                .forEach(file -> READING.matcher(SourceTree.text(file)).results().findFirst()
                        .ifPresent(match -> found.put(file.getFileName().toString(), match.group())));
        Set<String> listed = new TreeSet<>(FED.keySet());
        listed.addAll(OTHERS.keySet());
        assertEquals(List.of(), found.keySet().stream().filter(name -> !listed.contains(name)).toList(), "opens files and is not fed");
        assertEquals(List.of(), listed.stream().filter(name -> !found.containsKey(name)).toList(), "listed without need");
    }

    @Test
    void everyKindThatIsNamedIsOneOfTheFuzzer() {
        Set<String> kinds = KIND.matcher(SourceTree.text(SourceTree.root().resolve("releng/fuzz/src/slopewright/fuzz/Kind.java"))).results()
                .map(match -> match.group(1)).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(List.of(), FED.values().stream().flatMap(Set::stream).distinct().filter(kind -> !kinds.contains(kind)).toList());
        String script = SourceTree.text(SourceTree.root().resolve("releng/fuzz/run"));
        assertEquals(List.of(), kinds.stream().map(kind -> kind.toLowerCase(Locale.ROOT).replace('_', '-'))
                .filter(kind -> !script.contains(kind)).toList(), "the script says what it feeds");
    }
}
