package slopewright.headless.internal;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.text.SimpleDateFormat;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;

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
 * Makes ready, beside the thread of the command, what nearly every command needs: the model and its files while the words of the call are
 * still being parsed, and the rules and sentences, which the thread of the command helps with once it knows its words. What they touch is
 * read once, never changed and waited for by whoever needs it meanwhile. The classes of the model wait for each other where two threads
 * begin with different ones of them; so they are begun here by one thread, and for a check alone, which begins with the same one as it
 * loads a project.
 */
final class HeadStart extends Thread {

    private static final String CHECK = "check";
    private static final String RULE_SET = "ruleSetKey=\"";
    /** Where a file is larger than this it is not looked into for the rule sets that it names. */
    private static final int MOST_BYTES = 1 << 20;

    private final boolean known;
    private final boolean check;
    private final Path project;
    private final AtomicInteger taken = new AtomicInteger();

    private HeadStart(String[] words) {
        super("head start");
        known = words.length > 1 && Commands.NAMES.contains(words[0]);
        check = known && CHECK.equals(words[0]);
        project = project(words);
    }

    /** Begins for the words of a call; does nothing where they name no command. */
    static HeadStart begin(String[] words) {
        HeadStart thread = new HeadStart(words);
        if (thread.known) {
            thread.setDaemon(true);
            thread.start();
        }
        return thread;
    }

    @Override
    public void run() {
        try {
            if (check) {
                SlopewrightPackage.eINSTANCE.eClass();
                xml();
                RuleCatalogue.all();
            } else if (project != null) {
                dates();
                xml();
            }
        } catch (Exception | LinkageError e) {
            return; // the command meets the same fault, and says so
        }
        help();
    }

    /** Takes part in what has nothing to do with the model, until nothing of it is left to take. */
    void help() {
        try {
            while (known && make(taken.getAndIncrement())) {
                continue;
            }
        } catch (Exception | LinkageError e) {
            return; // as above
        }
    }

    /** Makes one thing ready; returns whether there was one. */
    private boolean make(int thing) throws IOException, GeneralSecurityException {
        switch (thing) {
            case 0 -> rules(project);
            case 1 -> MessageRenderer.of(Locale.ENGLISH);
            case 2 -> {
                if (check) {
                    MessageDigest.getInstance("SHA-256");
                    Families.all();
                }
            }
            default -> {
                return false;
            }
        }
        return true;
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
