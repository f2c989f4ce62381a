package slopewright.headless.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import org.junit.jupiter.api.Test;

import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** The document of the command line has the commands and options that the program takes, and the JSON that it prints. */
class CommandLineDocumentTest {

    private static final Pattern HEADING = Pattern.compile("### (?:`([a-z-]+)`|(Flags of a siting))");
    private static final Pattern OPTION = Pattern.compile("\\| `(--[a-z-]+)[ `].*");
    private static final String SITING = "Flags of a siting";
    private static final Path ROOT = Path.of(System.getProperty("slopewright.root"));

    private static List<String> document() throws IOException {
        return Files.readAllLines(ROOT.resolve("bundles/app/slopewright.headless/docs/command-line.md"));
    }

    /** The options in the first column of the tables, by section. */
    private static Map<String, Set<String>> documented() throws IOException {
        Map<String, Set<String>> sections = new LinkedHashMap<>();
        Set<String> open = new TreeSet<>();
        for (String line : document()) {
            Matcher heading = HEADING.matcher(line);
            Matcher option = OPTION.matcher(line);
            if (heading.matches()) {
                open = new TreeSet<>();
                sections.put(heading.group(1) == null ? heading.group(2) : heading.group(1), open);
            } else if (option.matches()) {
                assertTrue(open.add(option.group(1)), "twice: " + line);
            }
        }
        return sections;
    }

    private static CommandLine program() {
        PrintStream none = new PrintStream(new ByteArrayOutputStream(), false, StandardCharsets.UTF_8);
        return new CommandRunner(none, none, new ByteArrayInputStream(new byte[0])).build();
    }

    private static Set<String> options(CommandLine command) {
        return command.getCommandSpec().options().stream().map(OptionSpec::longestName).filter(name -> !"--help".equals(name))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void everyCommandAndOptionStandsInTheDocument() throws IOException {
        Map<String, Set<String>> documented = documented();
        Set<String> siting = documented.remove(SITING);
        Map<String, CommandLine> commands = program().getSubcommands();
        assertEquals(new TreeSet<>(commands.keySet()), new TreeSet<>(documented.keySet()));
        commands.forEach((name, command) -> {
            Set<String> expected = new TreeSet<>(documented.get(name));
            if (List.of("site", "signal", "surface", "sweep").contains(name)) {
                expected.addAll(siting);
            }
            assertEquals(expected, options(command), name);
        });
    }

    /** Collects the keys of a document with their place in it; arguments are of several kinds and stand apart. */
    private static void keys(JsonNode node, String place, Set<String> found) {
        if (node.isArray()) {
            node.forEach(item -> keys(item, place + "[]", found));
        }
        node.fieldNames().forEachRemaining(name -> {
            found.add(place + "." + name);
            if (!"arguments".equals(name)) {
                keys(node.get(name), place + "." + name, found);
            }
        });
    }

    private static JsonNode check() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream none = new PrintStream(new ByteArrayOutputStream(), false, StandardCharsets.UTF_8);
        new CommandRunner(new PrintStream(out, false, StandardCharsets.UTF_8), none, new ByteArrayInputStream(new byte[0]))
                .run(new String[] {"check", "--json", ROOT.resolve("demo-data/harrow-vale/harrow-vale.slopewright").toString()});
        return new ObjectMapper().readTree(out.toString(StandardCharsets.UTF_8));
    }

    /** The keys of the example are those that are printed, action apart, which the example leaves empty. */
    @Test
    void theExampleHasTheKeysThatCheckPrints() throws IOException {
        String text = String.join("\n", document());
        JsonNode example = new ObjectMapper().readTree(text.substring(text.indexOf("```json\n") + 8, text.indexOf("\n```\n")));
        Set<String> written = new TreeSet<>();
        keys(example, "", written);
        Set<String> printed = new TreeSet<>();
        JsonNode checked = check();
        keys(checked, "", printed);
        printed.removeIf(key -> key.contains(".action."));
        assertEquals(written, printed);
        assertEquals(example.get("schema"), checked.get("schema"));
        Set<String> kinds = new TreeSet<>();
        checked.findValues("arguments").forEach(arguments -> arguments.forEach(argument -> {
            Set<String> names = new TreeSet<>();
            argument.fieldNames().forEachRemaining(names::add);
            kinds.add(String.join(",", names));
        }));
        assertTrue(List.of("name", "unit,value", "term", "items", "arguments,key,text").containsAll(kinds), kinds.toString());
    }

    @Test
    void exitCodesAreThoseOfTheProgram() throws IOException {
        Set<Integer> documented = document().stream().filter(line -> line.matches("\\| [0-9] \\|.*")).map(line -> line.charAt(2) - '0')
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(Arrays.asList(ExitCodes.OK, ExitCodes.FINDINGS, ExitCodes.USAGE, ExitCodes.INPUT, ExitCodes.INTERNAL,
                ExitCodes.NOTHING_EVALUATED)), documented);
    }
}
