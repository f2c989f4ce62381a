package slopewright.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

/** Files are written in one place, which writes them whole or not at all; every exception is listed with its reason. */
class WritersTest {

    private static final Pattern WRITING = Pattern.compile("Files\\.(write\\w*|newOutputStream|newBufferedWriter|copy|move|createFile|"
            + "createTemp\\w+|newByteChannel)\\(|new (FileOutputStream|FileWriter|RandomAccessFile|PrintStream|PrintWriter)\\(|"
            + "FileChannel\\.open\\(|\\.renameTo\\(");

    /** Where a file is opened otherwise, and why. */
    private static final Map<String, String> OTHERS = Map.of(
            "AtomicFile.java", "the one place; moves what is put aside",
            "Beside.java", "its part: the file beside",
            "LockedFile.java", "its part: the lock on what is replaced",
            "ErrorLog.java", "a log is added to",
            "ClassData.java", "a temporary folder, for what it runs to be kept",
            "Start.java", "standard output and error",
            "CommandRunner.java", "standard output and error",
            "ProjectClaim.java", "a locked file that says who has a project open; not followed where it is a link",
            "SheetFile.java", "a temporary file of a workbook, which the reader of archives needs",
            "TemplateFolder.java", "opened for reading, so that no link is followed");

    @Test
    void filesAreWrittenInOnePlace() {
        Map<String, String> found = new TreeMap<>();
        SourceTree.bundles().stream().filter(bundle -> !SourceTree.relative(bundle.folder()).contains("/tests/"))
                .flatMap(bundle -> SourceTree.files(bundle.folder().resolve("src"), ".java").stream())
                .forEach(file -> WRITING.matcher(SourceTree.text(file)).results().findFirst()
                        .ifPresent(match -> found.put(file.getFileName().toString(), match.group())));
        assertEquals(List.of(), found.keySet().stream().filter(name -> !OTHERS.containsKey(name)).toList());
        assertEquals(List.of(), OTHERS.keySet().stream().filter(name -> !found.containsKey(name)).toList(), "listed without need");
    }
}
