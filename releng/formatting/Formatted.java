import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import javax.xml.parsers.DocumentBuilderFactory;

import org.eclipse.jdt.core.ToolFactory;
import org.eclipse.jdt.core.formatter.CodeFormatter;
import org.eclipse.jface.text.Document;
import org.eclipse.text.edits.TextEdit;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Lays out sources as the development environment would and counts the lines that it would write otherwise. Changes nothing. Run from
 * source by {@code releng/formatted}; the words are the settings, how many lines of a thousand may differ, and the sources.
 */
public final class Formatted {

    private static final int PER_THOUSAND = 1000;

    private Formatted() {
    }

    /** Prints each file with the lines that differ, and the count; ends with 1 where there are more than may be. */
    public static void main(String[] words) throws Exception {
        CodeFormatter formatter = ToolFactory.createCodeFormatter(settings(Path.of(words[0])));
        long most = Long.parseLong(words[1]);
        long lines = 0;
        long differ = 0;
        for (String word : List.of(words).subList(2, words.length)) {
            List<String> here = Files.readAllLines(Path.of(word));
            Set<String> there = new HashSet<>(laidOut(formatter, Files.readString(Path.of(word))));
            long others = here.stream().filter(line -> !there.contains(line)).count();
            lines += here.size();
            differ += others;
            if (others > 0) {
                System.out.println(word + ": " + others);
            }
        }
        System.out.println(differ + " of " + lines + " lines would be laid out otherwise");
        System.exit(lines == 0 || differ * PER_THOUSAND > most * lines ? 1 : 0);
    }

    private static Map<String, String> settings(Path file) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        NodeList entries = factory.newDocumentBuilder().parse(file.toFile()).getElementsByTagName("setting");
        Map<String, String> settings = new HashMap<>();
        for (int i = 0; i < entries.getLength(); i++) {
            Element entry = (Element) entries.item(i);
            settings.put(entry.getAttribute("id"), entry.getAttribute("value"));
        }
        return settings;
    }

    private static List<String> laidOut(CodeFormatter formatter, String source) throws Exception {
        TextEdit edit = formatter.format(CodeFormatter.K_COMPILATION_UNIT, source, 0, source.length(), 0, "\n");
        if (edit == null) {
            throw new IOException("a source cannot be read: " + source.lines().findFirst().orElse(""));
        }
        Document document = new Document(source);
        edit.apply(document);
        return document.get().lines().toList();
    }
}
