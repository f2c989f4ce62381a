package slopewright.headless.internal;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.text.SimpleDateFormat;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

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
 * project. It is begun without a lambda, each of which takes as long to be linked as it takes to begin a thread.
 */
public final class HeadStart extends Thread {

    private static final String CHECK = "check";
    private static final String RULE_SET = "ruleSetKey=\"";
    /** Where a file is larger than this it is not looked into for the rule sets that it names. */
    private static final int MOST_BYTES = 1 << 20;

    private final String[] words;

    private HeadStart(String[] words) {
        super("head start");
        this.words = words;
    }

    /** Begins for the words of a call; does nothing where they name no command. */
    public static void begin(String[] words) {
        if (words.length > 1 && Commands.NAMES.contains(words[0])) {
            HeadStart thread = new HeadStart(words);
            thread.setDaemon(true);
            thread.start();
        }
    }

    @Override
    public void run() {
        make(words);
    }

    /** Makes everything ready that a command needs, and returns when it is. */
    public static void make(String[] words) {
        try {
            Path project = project(words);
            if (CHECK.equals(words[0])) {
                SlopewrightPackage.eINSTANCE.eClass();
                xml();
                MessageDigest.getInstance("SHA-256");
                rules(project);
                Families.all();
                RuleCatalogue.all();
            } else if (project != null) {
                dates();
                xml();
                rules(project);
            } else {
                rules(null);
            }
            MessageRenderer.of(Locale.ENGLISH);
        } catch (Exception | LinkageError e) {
            return; // the command meets the same fault, and says so
        }
    }

    /** Returns the first project that is named, null where none is. */
    private static Path project(String[] words) {
        for (String word : words) {
            if (word.endsWith("." + ProjectFile.EXTENSION)) {
                try {
                    return Path.of(word);
                } catch (InvalidPathException e) {
                    return null;
                }
            }
        }
        return null;
    }

    /** The model's library makes some of these before it makes anything else. */
    private static void dates() {
        new SimpleDateFormat("yyyy-MM-dd'T'HH:mm:ss'.'SSSZ", Locale.getDefault()).getCalendar();
    }

    private static void xml() throws ParserConfigurationException, SAXException, IOException {
        SAXParserFactory.newDefaultInstance().newSAXParser()
                .parse(new ByteArrayInputStream("<a b='c'><d/></a>".getBytes(StandardCharsets.UTF_8)), new DefaultHandler());
    }

    /** The rule sets that a project names, or the usual one. */
    private static void rules(Path project) throws IOException {
        Set<String> named = named(project);
        for (String name : named) {
            RuleSets.find(ProjectRules.stored(name));
        }
        if (named.isEmpty()) {
            RuleSets.find(ProjectRules.DEFAULT);
        }
    }

    /** Returns what the text of a project says of rule sets; a guess of what the command will ask for. */
    private static Set<String> named(Path project) throws IOException {
        Set<String> named = new HashSet<>();
        if (project != null && Files.isRegularFile(project) && Files.size(project) <= MOST_BYTES) {
            String text = Files.readString(project, StandardCharsets.ISO_8859_1);
            for (int at = text.indexOf(RULE_SET); at >= 0; at = text.indexOf(RULE_SET, at + 1)) {
                int end = text.indexOf('"', at + RULE_SET.length());
                if (end > 0) {
                    named.add(text.substring(at + RULE_SET.length(), end));
                }
            }
        }
        return named;
    }
}
