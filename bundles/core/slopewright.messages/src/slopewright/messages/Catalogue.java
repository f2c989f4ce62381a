package slopewright.messages;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The sentences of one language: the files {@code catalogue/LANGUAGE/SUBJECT.properties} of the subjects that
 * {@code catalogue/subjects.txt} lists. A key stands in one file only.
 */
final class Catalogue {
    private final SortedMap<String, String> patterns;

    private Catalogue(SortedMap<String, String> patterns) {
        this.patterns = Collections.unmodifiableSortedMap(patterns);
    }

    /**
     * Reads the sentences of a language.
     *
     * @param language its two letters
     * @throws IllegalStateException where a file is missing, or a key stands twice; the message names both
     */
    static Catalogue of(String language) {
        SortedMap<String, String> patterns = new TreeMap<>();
        for (String subject : text("subjects.txt").lines().filter(line -> !line.isBlank()).toList()) {
            String file = language + "/" + subject + ".properties";
            Properties properties = new Properties();
            try (Reader reader = new InputStreamReader(open(file), StandardCharsets.UTF_8)) {
                properties.load(reader);
            } catch (IOException e) {
                throw new UncheckedIOException(file, e);
            }
            for (String key : properties.stringPropertyNames()) {
                if (patterns.put(key, properties.getProperty(key)) != null) {
                    throw new IllegalStateException(file + ": " + key + " stands in another file too");
                }
            }
        }
        return new Catalogue(patterns);
    }

    /** Returns whether there are sentences of a language. */
    static boolean has(Locale language) {
        return Catalogue.class.getResource("/catalogue/" + language.getLanguage() + "/common.properties") != null;
    }

    /** Returns the same with every text between the places in marks. */
    Catalogue marked() {
        SortedMap<String, String> marked = new TreeMap<>();
        patterns.forEach((key, pattern) -> marked.put(key, Marks.around(pattern, MessageRenderer.PLACE, place -> place.group(2) == null
                ? place.group() : "{" + place.group(1) + "|" + Marks.around(place.group(2)) + "|" + Marks.around(place.group(3)) + "}")));
        return new Catalogue(marked);
    }

    private static InputStream open(String file) {
        InputStream in = Catalogue.class.getResourceAsStream("/catalogue/" + file);
        if (in == null) {
            throw new IllegalStateException("catalogue/" + file + " is missing");
        }
        return in;
    }

    private static String text(String file) {
        try (InputStream in = open(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }

    /** Returns the sentence of a key with its places, empty where there is none. */
    Optional<String> find(String key) {
        return Optional.ofNullable(patterns.get(key));
    }

    /** Returns all keys with their sentences. */
    Map<String, String> patterns() {
        return patterns;
    }
}
