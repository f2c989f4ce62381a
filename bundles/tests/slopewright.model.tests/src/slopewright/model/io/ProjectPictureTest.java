package slopewright.model.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.messages.Reasoned;
import slopewright.model.BackgroundImage;
import slopewright.model.SlopewrightFactory;

/** A project from anybody leads to no file but its own, and to no other picture than was laid under the plan. */
class ProjectPictureTest {

    /** SHA-256 of the three letters abc, FIPS 180-2, appendix B.1. */
    private static final String SHA256_OF_ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    @TempDir
    private Path all;
    private Path folder;
    private Path project;
    private Path elsewhere;

    @BeforeEach
    void make() throws IOException {
        folder = Files.createDirectories(all.resolve("project"));
        project = Files.writeString(folder.resolve("field.slopewright"), "");
        elsewhere = Files.writeString(Files.createDirectories(all.resolve("project-elsewhere")).resolve("field.png"), "abc");
    }

    private String refusal(String named, Optional<String> sha256) {
        return Reasoned.of(assertThrows(IOException.class, () -> ProjectPicture.of(project, named, sha256))).key();
    }

    private static void link(Path link, Path target) throws IOException {
        Files.createSymbolicLink(link, target);
    }

    @Test
    void aPictureInTheFolderOrBelowIsFound() throws IOException {
        Path below = Files.writeString(Files.createDirectories(folder.resolve("pictures")).resolve("a.png"), "abc");
        assertEquals(below.toRealPath(), ProjectPicture.of(project, "pictures/a.png", Optional.of(SHA256_OF_ABC)));
        assertEquals(below.toRealPath(), ProjectPicture.of(project, "pictures/../pictures/a.png", Optional.empty()));
        assertEquals(below.toRealPath(), ProjectPicture.of(project, below.toString(), Optional.of(" " + SHA256_OF_ABC.toUpperCase())));
    }

    @Test
    void aPathOutOfTheFolderIsRefused() {
        for (String named : List.of("../project-elsewhere/field.png", "a/../../project-elsewhere/field.png", elsewhere.toString(), "..",
                "/", "../project-elsewhere/not-there.png", "/dev/zero")) {
            assertEquals("picture.outside", refusal(named, Optional.of(SHA256_OF_ABC)), named);
        }
        assertEquals("file.absent", refusal("\0", Optional.empty()));
        assertEquals("file.absent", refusal("not-there.png", Optional.empty()));
        assertEquals("file.not-ordinary", refusal("", Optional.empty()), "the folder itself");
    }

    @Test
    void aLinkOutOfTheFolderIsRefused() throws IOException {
        link(folder.resolve("link.png"), elsewhere);
        link(folder.resolve("pictures"), elsewhere.getParent());
        assertEquals("picture.outside", refusal("link.png", Optional.of(SHA256_OF_ABC)));
        assertEquals("picture.outside", refusal("pictures/field.png", Optional.of(SHA256_OF_ABC)));
    }

    @Test
    void aLinkWithinTheFolderAndAFolderThatIsALinkAreFollowed() throws IOException {
        Path own = Files.writeString(folder.resolve("own.png"), "abc");
        link(folder.resolve("link.png"), own);
        link(all.resolve("linked"), folder);
        assertEquals(own.toRealPath(), ProjectPicture.of(project, "link.png", Optional.of(SHA256_OF_ABC)));
        assertEquals(own.toRealPath(), ProjectPicture.of(all.resolve("linked/field.slopewright"), "own.png", Optional.empty()));
    }

    @Test
    void anotherPictureThanWasLaidUnderThePlanIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("a.png"), "abc");
        assertEquals(file.toRealPath(), ProjectPicture.of(project, "a.png", Optional.of(SHA256_OF_ABC)));
        Files.writeString(file, "abd");
        assertEquals("picture.changed", refusal("a.png", Optional.of(SHA256_OF_ABC)));
        assertEquals("picture.changed", refusal("a.png", Optional.of("")));
    }

    @Test
    void aPictureFromElsewhereIsCopiedBesideTheProjectAndNothingIsWrittenOver() throws IOException {
        Path taken = Files.writeString(folder.resolve("field.png"), "another");
        BackgroundImage image = SlopewrightFactory.eINSTANCE.createBackgroundImage();
        ProjectPicture.name(image, project, elsewhere);
        assertEquals("field-2.png", image.getPath());
        assertEquals(SHA256_OF_ABC, image.getSha256());
        assertEquals("another", Files.readString(taken));
        assertArrayEquals("abc".getBytes(StandardCharsets.US_ASCII),
                Files.readAllBytes(ProjectPicture.of(project, image.getPath(), Optional.of(image.getSha256()))));
        ProjectPicture.name(image, project, elsewhere);
        assertEquals("field-2.png", image.getPath(), "the same content is not copied twice");
        assertFalse(Files.exists(folder.resolve("field-3.png")));
    }

    @Test
    void aPictureBesideTheProjectIsNamedFromItsFolderOn() throws IOException {
        Path below = Files.writeString(Files.createDirectories(folder.resolve("pictures")).resolve("a.png"), "abc");
        BackgroundImage image = SlopewrightFactory.eINSTANCE.createBackgroundImage();
        ProjectPicture.name(image, project, below);
        assertEquals("pictures/a.png", image.getPath());
        assertEquals(SHA256_OF_ABC, image.getSha256());
        assertTrue(Files.notExists(folder.resolve("a.png")), "not copied");
    }
}
