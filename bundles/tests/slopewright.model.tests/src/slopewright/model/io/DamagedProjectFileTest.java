package slopewright.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.messages.MessageRenderer;
import slopewright.model.FullProject;
import slopewright.model.Project;

/** A damaged file is refused with the line of the fault. */
class DamagedProjectFileTest {

    /** A good file; its lines are counted in the cases. */
    private static final String GOOD = """
            <?xml version="1.0" encoding="UTF-8"?>
            <slopewright:Project xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" \
            xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" \
            xmlns:slopewright="http://slopewright.example/model/1.0" xmi:id="project-1">
              <aerodrome xmi:id="aerodrome-1" elevationM="12.5">
                <runways xmi:id="runway-1" codeNumber="4" paved="true">
                  <ends xmi:id="end-1" approachType="PRECISION_CAT_I" regularGroups="group-1">
                    <threshold xmi:id="place-1"/>
                  </ends>
                </runways>
                <aeroplaneGroups xmi:id="group-1"/>
                <circuits xmi:id="circuit-1"/>
              </aerodrome>
            </slopewright:Project>
            """;

    private static ProjectFileException fault(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return assertThrows(ProjectFileException.class, () -> ProjectFile.load(new ByteArrayInputStream(bytes), "zyx.slopewright"));
    }

    @Test
    void theGoodFileIsGood() throws ProjectFileException {
        Project project = ProjectFile.load(new ByteArrayInputStream(GOOD.getBytes(StandardCharsets.UTF_8)), "good");
        assertEquals(project.getAerodrome().getAeroplaneGroups(),
                project.getAerodrome().getRunways().get(0).getEnds().get(0).getRegularGroups());
    }

    /** In the good file one text is replaced by another; a \n in it is a line end. */
    @ParameterizedTest
    @CsvFileSource(resources = "/cases/damages.csv", useHeadersInDisplayName = true)
    void damageIsNamedWithItsLine(String found, String put, int line, String reason) {
        assertTrue(GOOD.contains(found), "the case fits the file");
        ProjectFileException fault = fault(GOOD.replace(found, put == null ? "" : put.replace("\\n", "\n")));
        assertEquals(reason, fault.fault().english());
        assertNotEquals(reason, MessageRenderer.of(Locale.GERMAN).render(fault.fault()));
        assertNotEquals("plain", fault.fault().key());
        assertEquals(line, fault.line());
        assertEquals("zyx.slopewright", fault.file());
        assertEquals("zyx.slopewright" + (line > 0 ? ":" + line : "") + ": " + reason, fault.getMessage());
    }

    /** A declaration that begins to name an encoding and does not. */
    @Test
    void aDeclarationWithoutItsEncodingIsNamed() {
        ProjectFileException fault = fault(GOOD.replace("encoding=\"UTF-8\"", "encoding\0\0\0\0\0"));
        assertEquals("zyx.slopewright:1: is no well-formed XML: its declaration names no encoding that can be read", fault.getMessage());
    }

    /** Cut anywhere before its end, a file is refused, and never later than the line in which it was cut. */
    @Test
    void aFileCutAnywhereIsRefused() {
        int end = GOOD.lastIndexOf('>');
        for (int length = 0; length <= end; length++) {
            String cut = GOOD.substring(0, length);
            ProjectFileException fault = fault(cut);
            assertTrue(fault.line() <= 1 + cut.chars().filter(c -> c == '\n').count(), fault::getMessage);
            assertEquals(1, fault.getMessage().lines().count(), fault::getMessage);
            assertFalse(fault.fault().english().isBlank());
        }
    }

    @Test
    void faultsNameTheColumnWhereItIsKnown() {
        ProjectFileException fault = fault(GOOD.replace("<circuits", "<circuits <"));
        assertEquals(10, fault.line());
        assertEquals("    <circuits <".length(), fault.column(), 1);
        assertEquals(0, fault("").column());
    }

    @Test
    void anEmptyFileIsCalledEmpty() {
        assertEquals("zyx.slopewright: is empty", fault("").getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"nothing of the kind", "\n \n", "{\"project\": 1}", "PK\u0003\u0004\u0000\u0000", "<project", "<a/><b/>"})
    void whatIsNoXmlIsCalledSo(String text) {
        String reason = fault(text).fault().english();
        assertTrue(reason.startsWith("is no well-formed XML: ") || reason.startsWith("names no format")
                || reason.startsWith("is no project"), reason);
        assertTrue(fault(text).line() > 0);
    }

    /** Whoever opens a letter or a picture is told so, and not what a reader of XML thinks of it. */
    @ParameterizedTest
    @ValueSource(strings = {"nothing of the kind", "{\"project\": 1}", "PK\u0003\u0004\u0000\u0000"})
    void anotherFileIsCalledNoProject(String text) {
        assertEquals("zyx.slopewright:1: is no project: it does not begin as one does", fault(text).getMessage());
    }

    /** The file that the entity names exists and must not show anywhere. */
    @Test
    void externalEntitiesAreNotRead(@TempDir Path folder) throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "the-secret");
        String entity = "<!DOCTYPE a [<!ENTITY x SYSTEM \"" + secret.toUri() + "\">]>\n<slopewright";
        ProjectFileException fault = fault(GOOD.replace("\n<slopewright", "\n" + entity).replace("12.5", "&x;"));
        assertEquals("holds a document type declaration, which is not allowed", fault.fault().english());
        assertEquals(2, fault.line());
        assertFalse(fault.getMessage().contains("the-secret"));
    }

    /** Ten levels of ten would be ten thousand million characters. */
    @Test
    void entitiesDoNotMultiply() {
        StringBuilder bomb = new StringBuilder("<?xml version=\"1.0\"?>\n<!DOCTYPE a [<!ENTITY e0 \"0123456789\">");
        for (int i = 1; i <= 10; i++) {
            bomb.append("<!ENTITY e").append(i).append(" \"").append(("&e" + (i - 1) + ";").repeat(10)).append("\">");
        }
        assertEquals("holds a document type declaration, which is not allowed", fault(bomb + "]>\n<a>&e10;</a>").fault().english());
    }

    /** Nothing of a schema that a file names is looked for. */
    @Test
    void schemasAreNotLoaded(@TempDir Path folder) throws IOException {
        Path schema = Files.writeString(folder.resolve("other.ecore"), """
                <ecore:EPackage xmlns:ecore="http://www.eclipse.org/emf/2002/Ecore" name="o" nsURI="http://slopewright.example/model/9.0"/>
                """);
        String other = "http://slopewright.example/model/9.0";
        String location = " xsi:schemaLocation=\"" + other + " " + schema.toUri() + "\"";
        ProjectFileException fault = fault(GOOD.replace("model/1.0\"", "model/9.0\"" + location));
        assertEquals("is of the format '" + other + "'; this version reads http://slopewright.example/model/1.0", fault.fault().english());
    }

    @Test
    void deepNestingEndsAtTheFirstUnknownElement() {
        ProjectFileException fault = fault(GOOD.replace("<threshold", "<threshold>".repeat(100_000) + "<threshold"));
        assertEquals(6, fault.line());
        assertEquals("'threshold' is not known here", fault.fault().english());
    }

    @Test
    void aFileOfEndlessLengthIsLeft() throws IOException {
        byte[] good = GOOD.getBytes(StandardCharsets.UTF_8);
        try (InputStream blanks = new Blanks(); InputStream file = new SequenceInputStream(new ByteArrayInputStream(good), blanks)) {
            ProjectFileException fault = assertThrows(ProjectFileException.class, () -> ProjectFile.load(file, "long"));
            assertEquals("long: is larger than 64 MB; keep bulk survey data in a block beside it", fault.getMessage());
        }
    }

    @Test
    void aStreamThatBreaksIsAFaultOfTheFile() throws IOException {
        try (InputStream broken = new Broken()) {
            ProjectFileException fault = assertThrows(ProjectFileException.class, () -> ProjectFile.load(broken, "far"));
            assertEquals("far: cannot be read: the disk is gone", fault.getMessage());
        }
    }

    @Test
    void aMissingFileAndAFolderAreRefused(@TempDir Path folder) {
        Path missing = folder.resolve("none.slopewright");
        ProjectFileException fault = assertThrows(ProjectFileException.class, () -> ProjectFile.load(missing));
        assertEquals(missing + ": cannot be read: there is no such file or folder", fault.getMessage());
        assertEquals(0, fault.line());
        assertThrows(ProjectFileException.class, () -> ProjectFile.load(folder));
    }

    /** One byte of a full file is changed at a time: it is read, or refused in one line; nothing else comes of it. */
    @Test
    void anyChangedByteIsReadOrRefused() {
        byte[] good = ProjectFile.bytes(FullProject.make());
        int refused = 0;
        for (int at = 0; at < good.length; at += 97) {
            byte[] bytes = good.clone();
            bytes[at] = (byte) (bytes[at] == '<' ? '&' : '<');
            try {
                ProjectFile.load(new ByteArrayInputStream(bytes), "changed");
            } catch (ProjectFileException e) {
                refused++;
                assertEquals(1, e.getMessage().lines().count(), e::getMessage);
            }
        }
        assertEquals((good.length + 96) / 97, refused, "an opening bracket or a bare ampersand is allowed nowhere it was not");
    }

    /** Blanks without end. */
    private static final class Blanks extends InputStream {
        @Override
        public int read() {
            return ' ';
        }

        @Override
        public int read(byte[] bytes, int from, int length) {
            Arrays.fill(bytes, from, from + length, (byte) ' ');
            return length;
        }
    }

    /** A stream that cannot be read. */
    private static final class Broken extends InputStream {
        @Override
        public int read() throws IOException {
            throw new IOException("the disk is gone");
        }
    }
}
