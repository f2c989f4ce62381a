package slopewright.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.messages.Reasoned;

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
        assertEquals("it is there already", Reasoned.of(refused).english());
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
        assertEquals("there is no such file or folder", Reasoned.of(missing).english());
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

    private static Set<PosixFilePermission> mode(Path file) throws IOException {
        return Files.getPosixFilePermissions(file);
    }

    @Test
    void permissionsStayAndWhatIsKeptHasThemToo() throws IOException {
        Path file = folder.resolve("mode.txt");
        AtomicFile.create(file, bytes("first"));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
        AtomicFile.replace(file, bytes("second"), AtomicFile.Terms.keeping(".before"));
        assertEquals(PosixFilePermissions.fromString("rw-r-----"), mode(file));
        assertEquals(PosixFilePermissions.fromString("rw-r-----"), mode(folder.resolve("mode.txt.before")));
        assertEquals("first", Files.readString(folder.resolve("mode.txt.before")));
        AtomicFile.replace(file, bytes("third"), AtomicFile.Terms.keeping(".before"));
        assertEquals("second", Files.readString(folder.resolve("mode.txt.before")));
        assertEquals(List.of("mode.txt", "mode.txt.before"), files());
    }

    @Test
    void aFileOfTheProductsOwnIsForNobodyElseAndFollowsNoLink() throws IOException {
        Path elsewhere = Files.writeString(folder.resolve("elsewhere.txt"), "somebody's");
        Path own = Files.createSymbolicLink(folder.resolve("own.txt"), elsewhere);
        AtomicFile.replace(own, bytes("work"), AtomicFile.Terms.OWN);
        assertEquals("somebody's", Files.readString(elsewhere));
        assertTrue(Files.isRegularFile(own, LinkOption.NOFOLLOW_LINKS));
        assertEquals(PosixFilePermissions.fromString("rw-------"), mode(own));
        AtomicFile.replace(own, bytes("more work"), AtomicFile.Terms.OWN);
        assertEquals("more work", Files.readString(own));
        assertEquals(PosixFilePermissions.fromString("rw-------"), mode(own));
    }

    @Test
    void whatAnotherProgramWroteMeanwhileIsLeft() throws IOException {
        Path file = Files.writeString(folder.resolve("a.txt"), "read");
        // The SHA-256 of the four letters "read", by sha256sum.
        AtomicFile.Terms terms = AtomicFile.Terms.keeping(".before")
                .whileStill(Optional.of("3316348dbadfb7b11c7c2ea235949419e23f9fa898ad2c198f999617912a9925"));
        Files.writeString(file, "written by another");
        IOException refused = assertThrows(FileChangedException.class, () -> AtomicFile.replace(file, bytes("mine"), terms));
        assertTrue(Reasoned.of(refused).english().contains("another program changed it"), Reasoned.of(refused).english());
        assertEquals("written by another", Files.readString(file));
        assertEquals(List.of("a.txt"), files());
        Files.writeString(file, "read");
        AtomicFile.replace(file, bytes("mine"), terms);
        assertEquals("mine", Files.readString(file));
        Files.delete(file);
        AtomicFile.replace(file, bytes("again"), terms);
        assertEquals("again", Files.readString(file));
    }

    /** Of many writers that all read the same content one wins, the others are told, and what the file held is kept. */
    @Test
    void ofManyThatReadTheSameOneReplacesIt() throws Exception {
        Path file = Files.writeString(folder.resolve("race.txt"), "read");
        AtomicFile.Terms terms = AtomicFile.Terms.keeping(".before")
                .whileStill(Optional.of("3316348dbadfb7b11c7c2ea235949419e23f9fa898ad2c198f999617912a9925"));
        ExecutorService writers = Executors.newFixedThreadPool(8);
        try {
            List<Callable<Boolean>> all = IntStream.range(0, 16).<Callable<Boolean>>mapToObj(number -> () -> {
                try {
                    AtomicFile.replace(file, bytes("writer " + number), terms);
                    return true;
                } catch (FileChangedException e) {
                    return false;
                }
            }).toList();
            int won = 0;
            for (Future<Boolean> written : writers.invokeAll(all)) {
                won += written.get() ? 1 : 0;
            }
            assertEquals(1, won);
            assertEquals("read", Files.readString(folder.resolve("race.txt.before")));
            assertEquals(List.of("race.txt", "race.txt.before"), files());
        } finally {
            writers.shutdownNow();
        }
    }

    @Test
    void aDeviceIsNotReplaced() {
        Path device = Path.of("/dev/null");
        IOException refused = assertThrows(IOException.class, () -> AtomicFile.replace(device, bytes("x")));
        assertEquals("it is no ordinary file", Reasoned.of(refused).english());
        assertThrows(FileAlreadyExistsException.class, () -> AtomicFile.create(device, bytes("x")));
        assertFalse(Files.isRegularFile(device));
    }

    /** What a killed process left is removed by the next that writes the file; all else is left, be it of a process that runs. */
    @Test
    void whatAKilledProcessLeftIsRemoved() throws Exception {
        Process ended = new ProcessBuilder("true").start();
        ended.waitFor();
        String random = ".01234567-89ab-cdef-0123-456789abcdef";
        Path left = Files.writeString(folder.resolve(".a.txt." + ended.pid() + random + ".new"), "half");
        Path kept = Files.writeString(folder.resolve(".a.txt." + ended.pid() + random + ".kept"), "half");
        List<Path> others = List.of(Files.writeString(folder.resolve(".a.txt.1" + random + ".new"), "of a process that runs"),
                Files.writeString(folder.resolve(".b.txt." + ended.pid() + random + ".new"), "of another file"),
                Files.writeString(folder.resolve(".a.txt.new"), "somebody's"));
        AtomicFile.create(folder.resolve("a.txt"), bytes("x"));
        assertFalse(Files.exists(left) || Files.exists(kept));
        assertTrue(others.stream().allMatch(Files::exists));
    }

    @Test
    void aLongNameIsNoObstacle() throws IOException {
        Path file = folder.resolve("\u00e4".repeat(120) + ".txt");
        AtomicFile.create(file, bytes("first"));
        AtomicFile.replace(file, bytes("second"));
        assertEquals("second", Files.readString(file));
    }

    @Test
    void whatIsPutAsideTakesNoNameThatIsTaken() throws IOException {
        Path file = folder.resolve("a.txt");
        for (String name : List.of("a.txt.old", "a.txt.old.2", "a.txt.old.3")) {
            Files.writeString(file, name);
            assertEquals(folder.resolve(name), AtomicFile.putAside(file, ".old"));
        }
        assertEquals("a.txt.old", Files.readString(folder.resolve("a.txt.old")));
        assertEquals(List.of("a.txt.old", "a.txt.old.2", "a.txt.old.3"), files());
    }
}
