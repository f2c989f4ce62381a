package slopewright.mutation;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

import org.pitest.mutationtest.config.ReportOptions;
import org.pitest.mutationtest.config.PluginServices;
import org.pitest.mutationtest.tooling.AnalysisResult;
import org.pitest.mutationtest.tooling.EntryPoint;
import org.pitest.testapi.TestGroupConfig;
import org.pitest.util.Glob;
import org.pitest.util.Verbosity;

/** Runs the tests of one bundle against changed classes of it, one thread, and prints what was noticed. */
public final class Mutation {

    private Mutation() {
    }

    /** Words: root of the tree, folder for the report, folder of the classes; names of the classes, of the tests, of tests left out. */
    public static void main(String[] words) throws Exception {
        Path root = Path.of(words[0]);
        Path report = Path.of(words[1]);
        ReportOptions options = new ReportOptions();
        options.setReportDir(report.toString());
        options.setShouldCreateTimestampedReports(false);
        options.addOutputFormats(List.of("XML"));
        options.setClassPathElements(Arrays.asList(System.getProperty("java.class.path").split(File.pathSeparator)));
        options.setCodePaths(List.of(words[2]));
        options.setTargetClasses(Arrays.asList(words[3].split(",")));
        options.setTargetTests(Glob.toGlobPredicates(Arrays.asList(words[4].split(","))));
        options.setExcludedTestClasses(Glob.toGlobPredicates(words.length > 5 ? List.of(words[5].split(",")) : List.of()));
        options.setSourceDirs(List.of());
        options.setProjectBase(root);
        options.setNumberOfThreads(1);
        options.setTimeoutConstant(4000);
        options.setTimeoutFactor(2);
        options.setMutators(List.of("DEFAULTS"));
        options.setVerbosity(Verbosity.DEFAULT);
        options.setGroupConfig(new TestGroupConfig());
        options.setInputEncoding(StandardCharsets.UTF_8);
        options.setOutputEncoding(StandardCharsets.UTF_8);
        options.setSkipFailingTests(false);
        options.setFailWhenNoMutations(true);
        options.addChildJVMArgs(List.of("-Xmx900m", "-XX:+UseSerialGC", "-Dslopewright.root=" + root, "-Djava.awt.headless=true",
                "-Duser.language=en", "-Duser.country=GB", "-Dfile.encoding=UTF-8"));
        AnalysisResult result = new EntryPoint().execute(root.toFile(), options, PluginServices.makeForContextLoader(), Map.of());
        if (result.getError().isPresent()) {
            throw result.getError().get();
        }
        Survivors.tell(root.resolve("releng/mutation/explained.tsv"), report);
    }
}
