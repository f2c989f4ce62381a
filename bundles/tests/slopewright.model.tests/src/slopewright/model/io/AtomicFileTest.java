package slopewright.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file is written whole or not at all, and nothing temporary is left. */
class AtomicFileTest {

    @TempDir
    private Path folder;

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void aFileThatIsThereIsNotMadeAnew() throws IOException {
        Path file = folder.resolve("a.txt");
        AtomicFile.create(file, bytes("first"));
        IOException refused = assertThrows(FileAlreadyExistsException.class, () -> AtomicFile.create(file, bytes("second")));
        assertEquals("it is there already", AtomicFile.reason(refused));
        assertEquals("first", Files.readString(file));
        assertEquals(List.of("a.txt"), files());
        AtomicFile.replace(file, bytes("third"));
        assertEquals("third", Files.readString(file));
        assertEquals(List.of("a.txt"), files());
    }

    /** Of many writers that make the same file at once one wins, and the file holds what that one wrote, whole. */
    @Test
    void oneOfManyWritersWins() throws InterruptedException, ExecutionException, IOException {
        Path file = folder.resolve("race.txt");
        ExecutorService writers = Executors.newFixedThreadPool(8);
        try {
            List<Callable<Boolean>> all = IntStream.range(0, 32).<Callable<Boolean>>mapToObj(number -> () -> {
                try {
                    AtomicFile.create(file, bytes(String.valueOf(number).repeat(10_000)));
                    return true;
                } catch (FileAlreadyExistsException e) {
                    return false;
                }
            }).toList();
            int won = 0;
            for (Future<Boolean> written : writers.invokeAll(all)) {
                won += written.get() ? 1 : 0;
            }
            assertEquals(1, won);
            assertEquals(List.of("race.txt"), files());
            String text = Files.readString(file);
            assertTrue(IntStream.range(0, 32).anyMatch(number -> text.equals(String.valueOf(number).repeat(10_000))));
        } finally {
            writers.shutdownNow();
        }
    }

    @Test
    void aFolderInTheWayIsLeftAndNothingStaysBehind() throws IOException {
        Path file = Files.createDirectory(folder.resolve("taken"));
        assertThrows(IOException.class, () -> AtomicFile.create(file, bytes("x")));
        Files.createFile(file.resolve("within"));
        assertThrows(IOException.class, () -> AtomicFile.replace(file, bytes("x")));
        assertEquals(List.of("taken"), files());
        IOException missing = assertThrows(IOException.class, () -> AtomicFile.replace(folder.resolve("none").resolve("x"), bytes("x")));
        assertEquals("there is no such file or folder", AtomicFile.reason(missing));
    }

    @Test
    void aLinkLeadsToWhatIsReplacedAndABrokenOneIsNotFollowed() throws IOException {
        Path real = folder.resolve("real.txt");
        AtomicFile.create(real, bytes("first"));
        Path link = Files.createSymbolicLink(folder.resolve("link.txt"), real);
        AtomicFile.replace(link, bytes("second"));
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("second", Files.readString(real));
        Path broken = Files.createSymbolicLink(folder.resolve("broken.txt"), folder.resolve("nowhere"));
        assertThrows(FileAlreadyExistsException.class, () -> AtomicFile.create(broken, bytes("x")));
        assertEquals(List.of("broken.txt", "link.txt", "real.txt"), files());
    }
}
