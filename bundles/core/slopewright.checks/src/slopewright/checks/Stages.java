package slopewright.checks;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import slopewright.messages.Argument;
import slopewright.messages.Words;
import slopewright.model.Stage;

/** The stages of a project as words. */
public final class Stages {
    private Stages() {
    }

    /** Returns the word used in files, options and output: {@code set-up}. */
    public static String key(Stage stage) {
        return stage.getName().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns the word for people, as an argument of a message. */
    public static Argument term(Stage stage) {
        return Words.term("stage." + key(stage));
    }

    /** Returns the stage of a word, empty where it names none. */
    public static Optional<Stage> find(String word) {
        return Stream.of(Stage.values()).filter(stage -> key(stage).equals(word)).findFirst();
    }
}
