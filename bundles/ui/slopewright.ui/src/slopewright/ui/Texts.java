package slopewright.ui;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.regex.Pattern;

import slopewright.messages.Marks;
import slopewright.messages.MessageRenderer;

/**
 * The catalogue of what one bundle of the window says: {@code messages.properties} in English and {@code messages_LANGUAGE.properties}
 * beside it, in the package of the class it is made for. The language is that of the platform ({@code -nl de}); what a language does not
 * have is said in English. Numbers have the decimal sign of the language. A text takes values by {@code %s}, or {@code %2$s} where the
 * order differs, and writes a per cent sign twice where it takes values.
 */
public final class Texts {

    private static final String NAME = ".messages";

    private static final Pattern PLACE = Pattern.compile("%(?:\\d+\\$)?s|%%");

    private final ResourceBundle texts;
    private final boolean isMarked;

    private Texts(ResourceBundle texts, boolean isMarked) {
        this.texts = texts;
        this.isMarked = isMarked;
    }

    /**
     * Returns the catalogue beside a class, in the language of the platform.
     *
     * @param neighbour the class
     * @throws MissingResourceException where there is none
     */
    public static Texts beside(Class<?> neighbour) {
        return beside(neighbour, Locale.getDefault());
    }

    /**
     * Returns the catalogue beside a class.
     *
     * @param neighbour the class
     * @param language  the language wished
     * @throws MissingResourceException where there is none
     */
    public static Texts beside(Class<?> neighbour, Locale language) {
        return of(neighbour, NAME, language);
    }

    /**
     * Returns a catalogue of another name beside a class, in the language of the platform.
     *
     * @param neighbour the class
     * @param file      its name without language and ending
     */
    public static Texts beside(Class<?> neighbour, String file) {
        return of(neighbour, "." + file, Locale.getDefault());
    }

    private static Texts of(Class<?> neighbour, String file, Locale language) {
        String name = neighbour.getPackageName() + file;
        return new Texts(ResourceBundle.getBundle(name, language, neighbour.getClassLoader(), EnglishElse.RULE),
                MessageRenderer.MARKED.getLanguage().equals(language.getLanguage()));
    }

    /** Returns a text that takes no values, empty where there is none of that name. */
    public Optional<String> find(String key) {
        return texts.containsKey(key) ? Optional.of(get(key)) : Optional.empty();
    }

    /**
     * Returns a text.
     *
     * @param key    its name
     * @param values what it takes, in the order of the English text
     * @throws MissingResourceException where the catalogue has no such text
     */
    public String get(String key, Object... values) {
        String text = isMarked ? Marks.around(texts.getString(key), PLACE) : texts.getString(key);
        return values.length == 0 ? text : String.format(texts.getLocale(), text, values);
    }

    /** Where there is no catalogue of the language, the one without a language speaks, whatever the platform's own language. */
    private static final class EnglishElse extends ResourceBundle.Control {

        static final ResourceBundle.Control RULE = new EnglishElse();

        @Override
        public List<String> getFormats(String baseName) {
            return Arrays.asList("java.properties");
        }

        @Override
        public Locale getFallbackLocale(String baseName, Locale locale) {
            return null;
        }
    }
}
