package slopewright.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One word a thing in German: each term of the trade has one word, and others for the same thing stand nowhere. */
class GlossaryTest {

    /**
     * A term.
     *
     * @param english   the term
     * @param german    its word
     * @param forbidden words that mean the same or are taken for it
     */
    record Term(String english, String german, List<String> forbidden) {
    }

    private static final List<Term> TERMS = List.of(
            new Term("aerodrome", "Flugplatz", List.of("Flughafen", "Aerodrom(?!e Design)")),
            new Term("runway", "Piste", List.of("Landebahn", "Startbahn", "Runway")),
            new Term("runway end", "Pistenende", List.of("Bahnende")),
            new Term("runway edge", "Pistenkante", List.of("Pistenrand", "Bahnrand")),
            new Term("taxiway", "Rollbahn", List.of("Rollweg")),
            new Term("threshold", "Schwelle", List.of("Landeschwelle", "Threshold")),
            new Term("approach slope indicator", "Gleitwinkelbefeuerung", List.of("Gleitweganzeige", "Gleitwegbefeuerung",
                    "Anfluggleitwinkelbefeuerung", "Gleitpfadbefeuerung")),
            new Term("obstacle surface", "Hindernisfreifläche", List.of("Hindernisfläche", "Hindernisschutzfläche")),
            new Term("glide path", "Gleitweg", List.of("Gleitpfad")),
            new Term("on-slope signal", "Gleitweg-Signal", List.of("Gleitwegsignal", "Gleitwinkelsignal")),
            new Term("helipad", "Hubschrauberlandeplatz", List.of("Helipad", "Heliport", "Helikopter")),
            new Term("azimuth", "Azimut", List.of("Seitenwinkel")),
            new Term("azimuth plate", "Azimutkreis", List.of("Azimutplatte")),
            new Term("family", "Bauart", List.of("Familie")),
            new Term("lens", "Linse", List.of("Optik")),
            new Term("review note", "Prüfvermerk", List.of("Notiz", "Prüfnotiz")),
            new Term("finding", "Befund", List.of("Feststellung")),
            new Term("rule set", "Regelwerk", List.of("Regelsatz", "Regelset")),
            new Term("section", "Längsschnitt", List.of("Vertikalschnitt")),
            new Term("magnetic variation", "Ortsmissweisung", List.of("(?<!orts)missweisung", "Deklination")),
            new Term("circuit", "Stromkreis", List.of("Schaltkreis")));

    static Stream<Path> german() {
        return Stream.concat(
                SourceTree.files(SourceTree.root().resolve("bundles/core/slopewright.messages/catalogue/de"), ".properties").stream(),
                CatalogueTest.windowBundles().flatMap(bundle -> SourceTree.files(bundle.folder(), "_de.properties").stream()))
                .filter(file -> !file.toString().contains("/target/"));
    }

    private static Properties read(Path file) {
        Properties texts = new Properties();
        try {
            texts.load(new StringReader(SourceTree.text(file)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return texts;
    }

    @ParameterizedTest
    @MethodSource("german")
    void noOtherWordStandsForATerm(Path file) {
        Set<String> wrong = new TreeSet<>();
        read(file).forEach((key, text) -> TERMS.forEach(term -> term.forbidden().stream()
                .filter(word -> Pattern.compile(word, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE).matcher((String) text).find())
                .forEach(word -> wrong.add(key + " says " + word + " for " + term.german() + ": " + text))));
        assertEquals(Set.of(), wrong, SourceTree.relative(file));
    }

    /** The words of the table are those that are in use. */
    @Test
    void everyWordIsUsed() {
        List<String> texts = german().flatMap(file -> read(file).values().stream()).map(text -> ((String) text).toLowerCase(Locale.GERMAN))
                .toList();
        assertTrue(texts.size() > 2000, texts.size() + " texts");
        assertEquals(List.of(), TERMS.stream().map(Term::german).filter(word -> texts.stream()
                .noneMatch(text -> text.contains(word.toLowerCase(Locale.GERMAN)))).toList());
    }
}
