package slopewright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.evaluation.MadeFrom;
import slopewright.messages.MessageRenderer;
import slopewright.model.Project;
import slopewright.report.handover.Deliverables;
import slopewright.report.handover.HandoverFile;
import slopewright.report.handover.HandoverOptions;
import slopewright.report.handover.HandoverSource;
import slopewright.siting.SitingException;
import slopewright.testkit.UnmarkedText;

/**
 * Whatever is handed over, tables, maps and lists of points among it, says nothing that stands in no catalogue; drawings of every family
 * stand for all.
 */
class MarkedDocumentsTest {

    private static final HandoverOptions OPTIONS = new HandoverOptions(LocalDate.of(2026, 6, 1), PaperSize.A4, MessageRenderer.MARKED);
    private static final Set<String> READ = Set.of("html", "svg", "txt", "csv", "xlsx", "geojson", "kml", "xml", "aixm", "dxf");
    /** Words of the forms themselves, which programs read: kinds of features and geometries, styles, cells and units. */
    private static final Pattern FORM = Pattern.compile("(?<=[\">,])#?(?:"
            + "FeatureCollection|Feature|Point|LineString|Polygon|unit|beam|sector-edge"
            + "|surface|runway|threshold|helipad|obstacle|survey-point|fato|tlof|point|line|area|absolute|clampToGround"
            + "|style-[a-z-]+|icons/\\S+"
            + "|true|false|BASELINE|A?TVASIS|(?:3B_)?AVASIS|P[A-Z]?API|PNI|PVASI|TRCV|LEFT|RIGHT|BOTH|YES|NO|OTHER|english|"
            + String.join("|", MadeFrom.NAMES) + "|" + MadeFrom.VERDICT + "|heightAboveEllipsoidM)(?=[\"<,\n])");

    @ParameterizedTest
    @ValueSource(strings = {"harrow-vale", "harrow-vale-faults", "every-family"})
    void nothingIsSaidThatNobodyCanTranslate(String demo) {
        Project project = Demo.project(demo);
        UnmarkedText unmarked = UnmarkedText.of(project);
        Set<String> found = new TreeSet<>();
        HandoverSource source = new HandoverSource(project);
        List<String> read = new ArrayList<>();
        for (HandoverFile file : Deliverables.of(project)) {
            if (READ.contains(file.extension()) && (demo.equals("every-family") || !file.extension().equals("svg"))
                    && (demo.equals("harrow-vale") || !file.extension().equals("dxf"))) {
                text(file, source).ifPresent(text -> {
                    read.add(file.fileName());
                    unmarked.in(text).forEach(word -> found.add(file.kind() + ": " + word));
                });
            }
        }
        assertFalse(unmarked.in("no translation").isEmpty(), "what is unmarked is found");
        assertTrue(read.size() >= 8, read.toString());
        if (!demo.equals("harrow-vale-faults")) {
            assertTrue(read.stream().map(name -> name.substring(name.lastIndexOf('.') + 1)).collect(Collectors.toSet())
                    .containsAll(Set.of("html", "csv", "xlsx", "geojson", "kml", "aixm")), read.toString());
        }
        assertEquals("", String.join("\n", found));
    }

    /** The words of a file; empty where it cannot be made, as of the faults of a demo, which is said elsewhere. */
    private static Optional<String> text(HandoverFile file, HandoverSource source) {
        try {
            byte[] bytes = file.writer().write(source, OPTIONS);
            String whole = file.extension().equals("xlsx") ? book(bytes) : new String(bytes, StandardCharsets.UTF_8);
            return Optional.of(switch (file.extension()) {
                case "html", "svg", "txt" -> text(whole);
                case "dxf" -> drawn(whole);
                default -> text(values(whole));
            });
        } catch (ReportException | SitingException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** What stands in a file beside the names that programs look for: remarks, and what people read in attributes. */
    private static String values(String file) {
        return FORM.matcher(file).replaceAll("\u00b7").replaceAll("(?s)<!--(.*?)-->", "$1")
                .replaceAll("<[^>]*? (?:desc|xlink:title)=\"([^\"]*)\"", "$1 <x")
                .replaceAll("\"\\w+\"\\s*:", " ").replaceAll("[:,]\\s*(?:null|true|false)\\b", ",")
                .replaceAll("\\b[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}\\b", " ");
    }

    /** The texts of a drawing: the values of the group 1 of its entities. */
    private static String drawn(String dxf) {
        List<String> all = dxf.lines().toList();
        List<String> lines = all.subList(all.indexOf("ENTITIES") + 1, all.lastIndexOf("OBJECTS"));
        return IntStream.range(0, lines.size() / 2).filter(i -> lines.get(2 * i).strip().equals("1"))
                .mapToObj(i -> lines.get(2 * i + 1)).collect(Collectors.joining(" "));
    }

    /** The texts of a workbook, with the names of its sheets, and the heads and feet of its pages without their codes. */
    private static String book(byte[] bytes) {
        StringBuilder text = new StringBuilder();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                String xml = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
                Pattern part = Pattern.compile("<t\\b[^>]*>([^<]*)</t>|<sheet name=\"([^\"]*)\"|<odd(?:Header|Footer)>([^<]*)<");
                part.matcher(xml).results().forEach(found -> text.append(Stream.of(1, 2, 3).map(found::group).filter(Objects::nonNull)
                        .findFirst().orElseThrow().replaceAll("&amp;(?:[LCRPN]|\\d+|&amp;|K\\w{6}|&quot;.*?&quot;)", " "))
                        .append(" \u00b7 "));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static String text(String markup) {
        return markup.replaceAll("(?s)<(style|script)\\b.*?</\\1>", " ").replaceAll("<[^>]*>", " ").replace("&lt;", "<").replace("&gt;",
                ">")
                .replace("&quot;", "\"").replace("&apos;", "'").replace("&amp;", "&").replace("&#x27e6;", "\u27e6")
                .replace("&#x27e7;", "\u27e7").replaceAll("&#x\\w+;", " ");
    }
}
