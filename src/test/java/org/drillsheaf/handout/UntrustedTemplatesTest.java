package org.drillsheaf.handout;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.drillsheaf.Problems;
import org.drillsheaf.client.Paper;
import org.drillsheaf.saying.Messages;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A clinic may change its templates, and somebody may hand it a bad one. Nothing is read, nothing is fetched, nothing runs. */
class UntrustedTemplatesTest {
    private static final AtomicInteger REQUESTS = new AtomicInteger();
    private static final HandoutPrinter GOOD = SampleDocuments.printer();

    @TempDir
    static Path folder;

    private static HttpServer server;

    @BeforeAll
    static void listen() throws IOException {
        Files.writeString(folder.resolve("secret.txt"), "kept-for-the-coach");
        Files.writeString(
                folder.resolve("secret.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'><rect width='9' height='9'/></svg>");
        server = HttpServer.create(new InetSocketAddress("127.0.0.1", 0), 0);
        server.createContext("/", exchange -> {
            REQUESTS.incrementAndGet();
            exchange.sendResponseHeaders(404, -1);
            exchange.close();
        });
        server.start();
    }

    @AfterAll
    static void nobodyAsked() {
        server.stop(0);
        assertThat(REQUESTS).hasValue(0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "${\"freemarker.template.utility.Execute\"?new()(\"id\")}",
                "${\"freemarker.template.utility.ObjectConstructor\"?new()(\"java.io.File\", \"/\")}",
                "${doc.frame?api.class}",
                "${doc.frame.getClass()}",
                "${say.class.protectionDomain}",
                "<#include \"../samples/house.yaml\">",
                "<#include \"FILE/secret.txt\">",
                "<#import \"HTTP/x.ftl\" as x>",
                "${sign(\"stop-on-ink\", \"x\")}",
                "${say(\"no.such.phrase\")}",
                "<#list 1..1000000000 as x>xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx</#list>",
                "${doc.frame.called",
            })
    void templateThatReachesOutIsRefusedWithItsLine(String attack) {
        Problems problems = new Problems();

        assertThat(print("<#include \"house.ftlx\">\n" + filled(attack), problems))
                .isEmpty();
        assertThat(problems.all()).hasSize(1).allSatisfy(p -> {
            assertThat(p.file()).isEqualTo("client-handout.ftlx");
            assertThat(p.message()).doesNotContain("kept-for-the-coach").doesNotContain("Exception");
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<fo:external-graphic src=\"url('FILE/secret.svg')\" fox:alt-text=\"x\"/>",
                "<fo:external-graphic src=\"url('HTTP/x.svg')\" fox:alt-text=\"x\"/>",
                "<fo:external-graphic src=\"url('jar:file:/x.jar!/y.svg')\" fox:alt-text=\"x\"/>",
                "<fo:external-graphic src=\"url('res:font/source-sans-pro-400')\" fox:alt-text=\"x\"/>",
                "<fo:external-graphic src=\"url('res:picture/99')\" fox:alt-text=\"x\"/>",
                "<fo:block background-image=\"url('HTTP/x.png')\">x</fo:block>",
                "<fo:block background-image=\"url('FILE/secret.svg')\">x</fo:block>",
                "<fo:instream-foreign-object fox:alt-text=\"x\"><svg xmlns=\"http://www.w3.org/2000/svg\" width=\"9\" height=\"9\">"
                        + "<image xmlns:xlink=\"http://www.w3.org/1999/xlink\" xlink:href=\"HTTP/x.png\" width=\"9\" height=\"9\"/></svg></fo:instream-foreign-object>",
                "<fo:instream-foreign-object fox:alt-text=\"x\"><svg xmlns=\"http://www.w3.org/2000/svg\" width=\"9\" height=\"9\">"
                        + "<script type=\"application/ecmascript\">java.lang.Runtime.getRuntime().exec('id')</script></svg></fo:instream-foreign-object>",
                "<fo:block font-family=\"FILE/secret.ttf\">x</fo:block>",
                "<fo:block font-family=\"url('HTTP/font.ttf')\">x</fo:block>",
                "<fo:block><fo:inline>not closed</fo:block>",
            })
    void pageThatReachesOutIsRefused(String attack) {
        Problems problems = new Problems();

        assertThat(print(page(filled(attack)), problems)).isEmpty();
        assertThat(problems.all()).isNotEmpty();
    }

    @Test
    void documentTypeIsRefused() {
        Problems problems = new Problems();
        String page = "<!DOCTYPE fo:root [<!ENTITY x SYSTEM \"" + filled("FILE/secret.txt") + "\">]>\n" + page("&x;");

        assertThat(print(page, problems)).isEmpty();
        assertThat(problems.all()).singleElement().satisfies(p -> assertThat(p.what())
                .contains("page description"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<fo:block><fo:external-graphic src=\"${sign('tick', 4).src}\"/></fo:block>|alternative text",
                "<fo:block font-family=\"Comic Neue\">x</fo:block>|font",
                "<fo:block font-style=\"italic\">x</fo:block>|font",
                "<fo:block>अ</fo:block>|“अ”",
            })
    void whatTheValidatorWouldPassIsAnErrorHere(String caseWithWords) {
        String[] parts = caseWithWords.split("\\|");
        Problems problems = new Problems();

        assertThat(print(page(parts[0]), problems)).isEmpty();
        assertThat(problems.all()).anySatisfy(p -> assertThat(p.what()).contains(parts[1]));
    }

    @Test
    void emptyPageOfTheHarnessPrints() {
        Problems problems = new Problems();

        assertThat(print(page("<fo:block>fine</fo:block>"), problems)).isPresent();
        assertThat(problems.all()).isEmpty();
    }

    private static String filled(String attack) {
        return attack.replace("FILE", folder.toUri().toString().replaceAll("/$", ""))
                .replace("HTTP", "http://127.0.0.1:" + server.getAddress().getPort());
    }

    private static String page(String content) {
        return "<fo:root xmlns:fo=\"http://www.w3.org/1999/XSL/Format\" xmlns:fox=\"http://xmlgraphics.apache.org/fop/extensions\""
                + " xml:lang=\"en\" font-family=\"Source Sans Pro, DejaVu Sans\"><fo:layout-master-set>"
                + "<fo:simple-page-master master-name=\"p\" page-width=\"210mm\" page-height=\"297mm\"><fo:region-body/></fo:simple-page-master>"
                + "</fo:layout-master-set><fo:declarations><x:xmpmeta xmlns:x=\"adobe:ns:meta/\">"
                + "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\"><rdf:Description rdf:about=\"\""
                + " xmlns:dc=\"http://purl.org/dc/elements/1.1/\"><dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">t</rdf:li></rdf:Alt>"
                + "</dc:title></rdf:Description></rdf:RDF></x:xmpmeta></fo:declarations><fo:page-sequence master-reference=\"p\">"
                + "<fo:flow flow-name=\"xsl-region-body\"><fo:block>" + content
                + "</fo:block></fo:flow></fo:page-sequence></fo:root>";
    }

    private static Optional<byte[]> print(String template, Problems problems) {
        Map<String, String> templates = new HashMap<>();
        templates.put("client-handout.ftlx", template);
        try {
            templates.put("house.ftlx", Files.readString(Path.of("templates/house.ftlx")));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        Map<String, Messages> messages = Map.of("en", GOOD.messagesFor("en"));
        return new HandoutPrinter(templates, messages, GOOD.house())
                .print(SampleDocuments.handout(SampleDocuments.frame(Paper.A4, false), 1), problems);
    }
}
