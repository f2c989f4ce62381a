package slopewright.headless.internal;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.text.SimpleDateFormat;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;

import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

import slopewright.checks.RuleCatalogue;
import slopewright.evaluation.ProjectRules;
import slopewright.messages.MessageRenderer;
import slopewright.model.SlopewrightPackage;
import slopewright.model.io.ProjectFile;
import slopewright.siting.Families;
import slopewright.standards.RuleSets;

/**
 * Makes ready, beside the thread of the command, what nearly every command needs, while the words of the call are still being parsed. What
 * it touches is read once, never changed and waited for by whoever needs it meanwhile. The classes of the model wait for each other where
 * two threads begin with different ones of them; so they are begun here for a check alone, which begins with the same one as it loads a
 * project.
 */
public final class HeadStart {

    private static final String CHECK = "check";

    private HeadStart() {
    }

    /** Begins for the words of a call; does nothing where they name no command. */
    public static void begin(String[] words) {
        if (words.length > 1 && Commands.NAMES.contains(words[0])) {
            boolean project = Arrays.stream(words).anyMatch(word -> word.endsWith("." + ProjectFile.EXTENSION));
            Thread thread = new Thread(() -> make(steps(words[0], project)), "head start");
            thread.setDaemon(true);
            thread.start();
        }
    }

    private static List<Step> steps(String command, boolean project) {
        if (CHECK.equals(command)) {
            return List.of(HeadStart::model, HeadStart::xml, HeadStart::rules, HeadStart::catalogue, HeadStart::sentences);
        }
        return project ? List.of(HeadStart::dates, HeadStart::xml, HeadStart::rules, HeadStart::sentences)
                : List.of(HeadStart::rules, HeadStart::sentences);
    }

    /** Makes everything ready that a command needs, and returns when it is. */
    public static void make(String[] words) {
        make(steps(words[0], true));
    }

    private static void make(List<Step> steps) {
        for (Step step : steps) {
            try {
                step.run();
            } catch (Exception | LinkageError e) {
                return; // the command meets the same fault, and says so
            }
        }
    }

    private static void model() {
        SlopewrightPackage.eINSTANCE.eClass();
    }

    private static void catalogue() {
        Families.all();
        RuleCatalogue.all();
    }

    /** The model's library makes some of these before it makes anything else. */
    private static void dates() {
        new SimpleDateFormat("yyyy-MM-dd'T'HH:mm:ss'.'SSSZ", Locale.getDefault()).getCalendar();
    }

    private static void xml() throws ParserConfigurationException, SAXException, IOException {
        SAXParserFactory.newDefaultInstance().newSAXParser()
                .parse(new ByteArrayInputStream("<a b='c'><d/></a>".getBytes(StandardCharsets.UTF_8)), new DefaultHandler());
    }

    private static void rules() {
        RuleSets.find(ProjectRules.DEFAULT);
    }

    private static void sentences() {
        MessageRenderer.of(Locale.ENGLISH);
    }

    /** One thing that is made ready. */
    @FunctionalInterface
    private interface Step {

        void run() throws ParserConfigurationException, SAXException, IOException;
    }
}
