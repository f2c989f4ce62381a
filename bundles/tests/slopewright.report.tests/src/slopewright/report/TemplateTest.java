package slopewright.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import javax.imageio.ImageIO;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.model.Project;
import slopewright.report.internal.pdf.PrintedText;

/** Templates of the user: what they change, and what they cannot do. */
class TemplateTest {

    private static final String SQUARE = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 20 10\"><g fill=\"#c00000\">"
            + "<path d=\"M0 0h10v10H0z\"/></g><circle cx=\"15\" cy=\"5\" r=\"4\" fill=\"#0000cc\"/></svg>";

    @TempDir
    private Path parent;
    private Path folder;

    @BeforeEach
    void makeFolder() throws IOException {
        folder = Files.createDirectory(parent.resolve("template"));
    }

    private void put(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private String fault() {
        ReportException refused = assertThrows(ReportException.class, () -> ReportTemplate.read(folder));
        List<Argument> said = refused.reason().arguments();
        String key = said.get(said.size() - 1) instanceof Message what ? what.key() : "none";
        assertTrue(key.startsWith("template."), "no words of the catalogues: " + refused.getMessage());
        return refused.getMessage();
    }

    private String html(Project project) throws ReportException {
        return new String(Reports.write(project, Optional.empty(), new ReportOptions("2026-06-01", PaperSize.A4, ReportTemplate.read(
                folder)), Reports.Format.HTML), StandardCharsets.UTF_8);
    }

    private static byte[] png() throws IOException {
        BufferedImage image = new BufferedImage(30, 12, BufferedImage.TYPE_INT_RGB);
        image.setRGB(3, 4, 0x336699);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return out.toByteArray();
    }

    @Test
    void anEmptyFolderGivesTheBuiltInReport() throws ReportException {
        assertEquals(Demo.html(Demo.project("harrow-vale")), html(Demo.project("harrow-vale")));
    }

    @Test
    void ownCoverStyleRunningLineAndSignaturesStandInTheReport() throws ReportException, IOException {
        put("cover.html", "<div class=\"own\">{{logo}}<p id=\"own-cover\" style=\"color: rgb(10, 20, 30)\">For {{project.client}}, "
                + "{{ project.document-number }}</p>{{cautions}}</div>");
        put("style.css", "/* ours: url(x) */\n.own > p { font-size: 30pt; }\n@page { @bottom-left { content: \"Ours\"; } }\n");
        put("running.html", "Ours, page of {{project.name}}");
        put("sign-off.html", "<p>Signed by {{project.approved-by}} <a href=\"#own-cover\">back</a></p>");
        Files.write(folder.resolve("logo.png"), png());
        Project project = Demo.project("harrow-vale");
        project.setClient("A & B <b>Airfields</b>");
        project.setDocumentNumber("HV-017");
        project.setApprovedBy("{{cautions}} N. Example");
        String html = html(project);
        String text = Demo.text(html);
        assertTrue(text.contains("For A & B <b>Airfields</b>, HV-017"), text);
        assertTrue(text.contains("Ours, page of Harrow Vale"));
        assertTrue(text.contains("Signed by {{cautions}} N. Example back"), "text of a project holds no placeholders");
        assertTrue(html.contains(".own > p { font-size: 30pt; }"));
        Cautions.in(Locale.ENGLISH).forEach(caution -> assertTrue(text.contains(caution), caution));
        byte[] inside = Base64.getDecoder().decode(html.replaceFirst("(?s).*src=\"data:image/png;base64,([^\"]*)\".*", "$1"));
        assertEquals(0x336699, ImageIO.read(new ByteArrayInputStream(inside)).getRGB(3, 4) & 0xFFFFFF);
        ReportOptions options = new ReportOptions("2026-06-01", PaperSize.A4, ReportTemplate.read(folder));
        byte[] pdf = Reports.write(project, Optional.empty(), options, Reports.Format.PDF);
        assertArrayEquals(pdf, Reports.write(project, Optional.empty(), options, Reports.Format.PDF));
        assertTrue(Demo.pdfText(pdf).contains("For A & B <b>Airfields</b>, HV-017"));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            int pictures = 0;
            for (COSName name : document.getPage(0).getResources().getXObjectNames()) {
                pictures += document.getPage(0).getResources().isImageXObject(name) ? 1 : 0;
            }
            assertEquals(1, pictures);
        }
    }

    @Test
    void chaptersComeInTheOrderOfTheTemplateAndAreNumberedSo() throws ReportException, IOException {
        put("report.html", "{{cover}}{{chapter.sources}}{{chapter.compliance}}<p>Between</p>{{chapter.result}}{{contents}}");
        String text = Demo.text(html(Demo.project("harrow-vale")));
        assertTrue(text.contains("1 Values to confirm and overrides"), text);
        assertTrue(text.contains("2 Annex: outcome of every rule"), text);
        assertTrue(text.indexOf("Between") < text.indexOf("4 Result"), text);
    }

    /** A red square on the left, a blue disc on the right, 1600 pixels wide; read back from the report. */
    @Test
    void aLogoOfVectorGraphicsIsPainted() throws ReportException, IOException {
        put("logo.svg", SQUARE);
        String html = html(Demo.project("harrow-vale"));
        byte[] inside = Base64.getDecoder().decode(html.replaceFirst("(?s).*src=\"data:image/png;base64,([^\"]*)\".*", "$1"));
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(inside));
        assertEquals(1600, image.getWidth());
        assertEquals(800, image.getHeight());
        assertEquals(0xFFC00000, image.getRGB(100, 100));
        assertEquals(0xFF0000CC, image.getRGB(1200, 400));
        assertEquals(0, image.getRGB(1599, 0));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            <p>{{project.nome}}</p>                                          | line 1: there is no placeholder 'project.nome'
            `<p>a</p>\n<p>b\n{{x}}</p>`                                      | line 3: there is no placeholder 'x'
            <p>{{chapter.result}}</p>                                        | line 1: there is no placeholder 'chapter.result'
            <p>{{project.name</p>                                            | line 1: '{{' without its counterpart
            <p>}}</p>                                                        | line 1: '}}' without its counterpart
            `<p>\n<script>1</script></p>`                                    | line 2: the element 'script'
            <iframe></iframe>                                                | line 1: the element 'iframe'
            <object data="x"></object>                                       | line 1: the element 'object'
            <link href="x"/>                                                 | line 1: the element 'link'
            <style>p { }</style>                                             | line 1: the element 'style'
            <svg></svg>                                                      | line 1: the element 'svg'
            <p onclick="x()">a</p>                                           | line 1: the attribute 'onclick'
            <p xmlns:x="urn:x">a</p>                                         | line 1: the attribute 'xmlns:x'
            <a href="https://example.org/">a</a>                             | line 1: a link may only lead
            <a href="javascript:x()">a</a>                                   | line 1: a link may only lead
            <a href="file:///etc/hostname">a</a>                             | line 1: a link may only lead
            <img alt="a" src="../secret.png" />                              | line 1: a picture is named by the bare name
            <img alt="a" src="/etc/secret.png" />                            | line 1: a picture is named by the bare name
            <img alt="a" src="file:///etc/secret.png" />                     | line 1: a picture is named by the bare name
            <img alt="a" src="http://example.org/a.png" />                   | line 1: a picture is named by the bare name
            <img alt="a" src="data:image/png;base64,AAAA" />                 | line 1: a picture is named by the bare name
            <img alt="a" src="none.png" />                                   | line 1: the template has no picture 'none.png'
            <img src="none.png" />                                           | line 1: the picture 'none.png' needs words
            <p style="background: url(http://example.org/a)">a</p>           | line 1: 'url('
            <p style="{{project.name}}">a</p>                                | line 1: a placeholder may not stand in the attribute 'style'
            <p class="{{project.name}}">a</p>                                | line 1: a placeholder may not stand in the attribute 'class'
            <p id="part-1">a</p>                                             | line 1: 'part-1' cannot be
            <?php x ?>                                                       | line 1: a processing instruction
            <p>a                                                             | line 1:
            <p>&nbsp;</p>                                                    | line 1:
            <!DOCTYPE p [<!ENTITY x SYSTEM "file:///etc/hostname">]><p>&x;</p> | line 1:
            </fragment><fragment>                                            | line 1:
            """)
    void aFragmentThatWouldDoMoreThanLookIsRefused(String fragment, String message) throws IOException {
        put("cover.html", fragment);
        String fault = fault();
        assertTrue(fault.startsWith("cover.html, " + message), fault);
    }

    /** Entities that would grow without end are refused before they are read. */
    @Test
    void entitiesAreRefused() throws IOException {
        put("cover.html", "<!DOCTYPE x [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;\">]><p>&b;</p>");
        assertTrue(fault().startsWith("cover.html, line 1: "), fault());
        put("cover.html", "<p>{{cautions}}</p>");
        put("logo.svg", "<!DOCTYPE svg [<!ENTITY a SYSTEM \"file:///etc/hostname\">]><svg viewBox=\"0 0 1 1\"><title>&a;</title></svg>");
        assertTrue(fault().startsWith("logo.svg: line 1: a document type"), fault());
    }

    @ParameterizedTest
    @ValueSource(strings = {"@import \"x.css\";", "@IMPORT 'http://example.org/x.css';", "p { background: url(a.png) }",
        "p { background: URL (a.png) }", "p { background: u\\72l(a.png) }", "p { background: image-set(\"a.png\" 1x) }",
        "@font-face { src: local(x) }", "p { width: expression(1) }", "</style><script>1</script>", "p { content: \"&x;\" }",
        "p { behavior: src(x) }", "@namespace x \"y\";", "/* no end"})
    void aStyleThatWouldFetchOrLeaveIsRefused(String rule) throws IOException {
        put("style.css", "p { color: red; }\n" + rule);
        assertTrue(fault().startsWith("style.css, line 2: "), fault());
    }

    @Test
    void aFunctionSplitOverTwoLinesIsRefused() throws IOException {
        put("style.css", "p { background: url\n(a.png) }");
        assertTrue(fault().startsWith("style.css, line 1: "), fault());
    }

    @ParameterizedTest
    @ValueSource(strings = {"<script>1</script>", "<image href=\"a.png\"/>", "<use href=\"a.svg#a\"/>", "<text>a</text>",
            "<style>a</style>",
        "<rect width=\"1\" height=\"1\" style=\"fill:url(x)\"/>", "<rect width=\"1\" height=\"1\" fill=\"url(http://example.org/)\"/>",
        "<foreignObject/>", "<path d=\"M0 0 X\"/>"})
    void aLogoThatHoldsMoreThanShapesIsRefused(String element) throws IOException {
        put("logo.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 1 1\">" + element + "</svg>");
        assertTrue(fault().startsWith("logo.svg: "), fault());
    }

    /** What is looked over and what is painted are the same letters, and what the painter would say of a path is not printed. */
    @Test
    void aLogoIsWrittenInOneEncoding() throws IOException, ReportException {
        String shape = "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'><path d='1e308'/><rect width='9' height='9'/></svg>";
        Files.write(folder.resolve("logo.svg"), (shape + "<!-- \u00e4 -->").getBytes(StandardCharsets.ISO_8859_1));
        assertTrue(fault().startsWith("logo.svg: is not written in UTF-8"), fault());
        put("logo.svg", "<?xml version='1.0' encoding='IBM037'?>" + shape);
        assertTrue(fault().contains("is not written in UTF-8"), fault());
        put("logo.svg", "<?xml version='1.0' encoding='utf-8'?>" + shape);
        PrintStream before = System.err;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        try (PrintStream err = new PrintStream(printed)) {
            System.setErr(err);
            ReportTemplate.read(folder);
        } finally {
            System.setErr(before);
        }
        assertEquals("", printed.toString());
    }

    /** Groups in groups without end, elements without number, and copies of copies are refused by name, before anything is built up. */
    @Test
    void aLogoThatIsTooDeepOrTooLargeIsRefused() throws IOException {
        String head = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 10 10\">";
        put("logo.svg", head + "<g>".repeat(20_000) + "</g>".repeat(20_000) + "</svg>");
        assertTrue(fault().startsWith("logo.svg: line 1: elements lie more than 48 deep"), fault());
        put("logo.svg", head + "<g/>".repeat(20_001) + "</svg>");
        assertTrue(fault().startsWith("logo.svg: line 1: more than 20000 elements"), fault());
        put("logo.svg", head + "<g id=\"a\"/>" + "<use href=\"#a\"/>".repeat(41) + "</svg>");
        assertTrue(fault().startsWith("logo.svg: line 1: more than 40 elements 'use'"), fault());
        put("logo.svg", "<html/>");
        assertTrue(fault().startsWith("logo.svg: line 1: is not a file of scalable vector graphics"), fault());
        put("logo.svg", head + "<g>");
        assertTrue(fault().startsWith("logo.svg, line 1: is not well formed"), fault());
        put("logo.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 1000 1\"/>");
        assertTrue(fault().startsWith("logo.svg: the size of the picture"), fault());
    }

    /** What would take something out of its place or out of sight is refused, wherever it stands and however it is written. */
    @ParameterizedTest
    @ValueSource(strings = {"* { display: none }", "*{DISPLAY:NONE}", ".verdict { visibility: hidden }", "div { opacity: 0 }",
        ".cover { position: absolute; left: 400mm }", "p { position: running(away) }", "p { transform: translate(0, 400mm) }",
        "p { text-indent: -900mm }", "div { margin-top: -40mm }", "div { margin-left: 500mm }", "div { padding-left: 200% }",
        "div { height: 1mm }", "div { max-height: 0; overflow: hidden }", "p { font-size: 0 }", "p { font-size: 1pt }",
        "p { font: 0.1pt serif }", "p { line-height: 0 }", "p { color: #fff !important }", "p { z-index: 9 }", "p { clip: auto }",
        ".verdict::before { content: 'All rules are met. Once it was said: ' }", "@page { margin: 140mm }", "@page { size: 20mm 20mm }",
        "@media print { p { display: none } }", "p { color: \"; display: none }", "p { color: red } }", "p { color: red",
        "p { width: 90vw }", "p { float: bottom }", "p { -fs-page-sequence: start }"})
    void aStyleThatWouldHideOrMoveIsRefused(String rule) throws IOException {
        put("style.css", "p { color: red; }\n" + rule);
        assertTrue(fault().startsWith("style.css, line 2: "), fault());
    }

    @ParameterizedTest
    @ValueSource(strings = {"display: none", "position: absolute", "font-size: 0", "margin-top: -90mm", "color: red; } p { color: blue"})
    void aFragmentThatWouldHideOrMoveIsRefused(String style) throws IOException {
        put("cover.html", "<div>{{cautions}}</div>\n<p style=\"" + style + "\">a</p>");
        assertTrue(fault().startsWith("cover.html, line 2: "), fault());
    }

    /** A template may not print what looks like the verdict or the cautions. */
    @Test
    void aPartOfATemplateCannotLookLikeTheVerdict() throws IOException {
        put("cover.html", "{{cautions}}\n<p class=\"verdict clear\">Met</p>");
        assertTrue(fault().startsWith("cover.html, line 2: the class 'verdict clear'"), fault());
    }

    /** White on white everywhere: what the template makes cannot be read then, but verdict, cautions and provenance can. */
    @Test
    void aTemplateThatRecoloursEverythingLeavesVerdictCautionsAndProvenance() throws ReportException, IOException {
        put("style.css", "* { color: #ffffff; background: #ffffff; text-transform: uppercase; letter-spacing: 20mm; font-size: 5pt; }\n"
                + "p.verdict, .verdict.locked, body p.locked.verdict.open, .locked td { color: white; text-align: right; width: 5mm }\n");
        Project project = Demo.project("harrow-vale");
        assertTrue(project.getConfirmations().removeIf(one -> "four-unit-row.boundary-allowance-min".equals(one.getValueKey())));
        byte[] pdf = Reports.write(project, Optional.empty(), new ReportOptions("2026-06-01", PaperSize.A4, ReportTemplate.read(folder)),
                Reports.Format.PDF);
        String sources = "Doc 9157 Part 4 (not read), 8.3";
        String verdict = Demo.html(project).replaceFirst("(?s).*<p class=\"locked verdict[^>]*>([^<]*)</p>.*", "$1");
        assertTrue(verdict.matches("(Not met|To clear up|Met): .*"), verdict);
        for (String sentence : List.of(Cautions.in(Locale.ENGLISH).get(0), Cautions.in(Locale.ENGLISH).get(1), verdict,
                "Provenance of a value: published", sources,
                "from memory, to be confirmed", "A design aid. Local codes and the authority come first.")) {
            assertEquals(Optional.empty(), PrintedText.missing(pdf, List.of(sentence)));
        }
        assertEquals(Optional.of("HARROW VALE (ZZHV)"), PrintedText.missing(pdf, List.of("HARROW VALE (ZZHV)")),
                "the reader tells white from black");
    }

    /** Boxes in boxes that push the cautions off the page: every style by itself would do, so the page itself is looked at. */
    @Test
    void aTemplateThatPushesTheCautionsOffThePageIsRefused() throws ReportException, IOException {
        put("cover.html", "<div class=\"x\">".repeat(5) + "{{verdict}}{{cautions}}" + "</div>".repeat(5));
        put("style.css", ".x { padding-left: 60mm }");
        ReportOptions options = new ReportOptions("2026-06-01", PaperSize.A4, ReportTemplate.read(folder));
        Project project = Demo.project("harrow-vale");
        String message = assertThrows(ReportException.class, () -> Reports.write(project, Optional.empty(), options, Reports.Format.PDF))
                .getMessage();
        assertTrue(message.startsWith("the template leaves no room in which this could be read"), message);
    }

    @Test
    void linksToFilesAreRefusedEvenIntoTheFolder() throws IOException {
        Path outside = Files.writeString(parent.resolve("outside.html"), "{{cautions}} secret");
        Files.createSymbolicLink(folder.resolve("cover.html"), outside);
        assertTrue(fault().startsWith("cover.html: a template holds plain files"), fault());
        Files.delete(folder.resolve("cover.html"));
        Files.write(folder.resolve("seal.png"), png());
        Files.createSymbolicLink(folder.resolve("logo.png"), folder.resolve("seal.png"));
        assertTrue(fault().startsWith("logo.png: a template holds plain files"), fault());
        Files.delete(folder.resolve("logo.png"));
        Files.createDirectory(folder.resolve("style.css"));
        assertTrue(fault().startsWith("style.css: a template holds plain files"), fault());
    }

    @Test
    void sizesAreLimited() throws IOException {
        put("style.css", " ".repeat(256 * 1024 + 1));
        assertTrue(fault().startsWith("style.css: larger than the 256 KiB"), fault());
        Files.delete(folder.resolve("style.css"));
        put("cover.html", "<div>".repeat(50) + "{{cautions}}" + "</div>".repeat(50));
        assertTrue(fault().contains("more than 40 deep"), fault());
        Files.delete(folder.resolve("cover.html"));
        ByteArrayOutputStream wide = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(4001, 1, BufferedImage.TYPE_INT_RGB), "png", wide);
        Files.write(folder.resolve("logo.png"), wide.toByteArray());
        assertTrue(fault().startsWith("logo.png: more than 4000 pixels"), fault());
        Files.write(folder.resolve("logo.png"), new byte[] {1, 2, 3});
        assertTrue(fault().startsWith("logo.png: is not a picture"), fault());
        Files.write(folder.resolve("logo.png"), png());
        Files.write(folder.resolve("cover.html"), new byte[] {(byte) 0xC3, 0x28});
        assertTrue(fault().startsWith("cover.html: is not text in UTF-8"), fault());
    }

    /** What an authority has to see can be moved but not left out. */
    @Test
    void cautionsAndFindingsCanNotBeLeftOut() throws IOException {
        put("cover.html", "<p>{{project.name}}</p>");
        assertTrue(fault().contains("{{cautions}} is missing"), fault());
        Files.delete(folder.resolve("cover.html"));
        put("report.html", "{{cover}}{{chapter.result}}{{chapter.sources}}");
        assertTrue(fault().contains("{{chapter.compliance}} is missing"), fault());
        put("report.html", "{{cover}}{{chapter.result}}{{chapter.sources}}{{chapter.compliance}}{{chapter.result}}");
        assertTrue(fault().contains("{{chapter.result}} stands more than once"), fault());
    }

    @Test
    void aFolderThatIsNotThereIsNamed() {
        Path none = parent.resolve("none");
        assertTrue(assertThrows(ReportException.class, () -> ReportTemplate.read(none)).getMessage().contains("none"));
        assertFalse(Files.exists(none));
    }
}
