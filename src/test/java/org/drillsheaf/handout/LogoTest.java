package org.drillsheaf.handout;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpServer;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javax.imageio.ImageIO;
import org.drillsheaf.Problems;
import org.drillsheaf.handout.paint.Logo;
import org.drillsheaf.handout.paint.Picture;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A clinic's logo may come from anybody. */
class LogoTest {
    private static final AtomicInteger REQUESTS = new AtomicInteger();

    @TempDir
    static Path folder;

    private static HttpServer server;

    @BeforeAll
    static void listen() throws IOException {
        Files.writeString(folder.resolve("secret.txt"), "kept-for-the-coach");
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

    @Test
    void plainShapesBecomeAPictureOfOneLineOfTheHead() throws IOException {
        Problems problems = new Problems();

        Optional<Picture> logo = Logo.read("logo.svg", Files.readAllBytes(Path.of("samples/logo.svg")), problems);

        assertThat(problems.all()).isEmpty();
        assertThat(logo).hasValueSatisfying(p -> assertThat(p.heightMm()).isBetween(4.0, 4.4));
        assertThat(dots(logo.orElseThrow())).as("ink").contains(0xFF1A1A1A, 0xFFFFFFFF);
    }

    @Test
    void smallPngBecomesAPicture() throws IOException {
        BufferedImage red = new BufferedImage(40, 20, BufferedImage.TYPE_INT_ARGB);
        red.setRGB(20, 10, 0xFFAA0000);
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(red, "png", png);

        Optional<Picture> logo = Logo.read("logo.png", png.toByteArray(), new Problems());

        assertThat(logo).hasValueSatisfying(p -> assertThat(p.widthMm()).isBetween(8.3, 8.5));
        assertThat(dots(logo.orElseThrow())).contains(0xFFAA0000);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<!DOCTYPE svg [<!ENTITY x SYSTEM \"FILE\">]><svg xmlns='NS' viewBox='0 0 9 9'><title>&x;</title><rect"
                        + " width='9' height='9'/></svg>",
                "<!DOCTYPE svg SYSTEM \"HTTP/x.dtd\"><svg xmlns='NS' viewBox='0 0 9 9'><rect width='9'"
                        + " height='9'/></svg>",
                "<!DOCTYPE svg [<!ENTITY a 'aaaaaaaa'><!ENTITY b '&a;&a;&a;&a;'>]><svg xmlns='NS' viewBox='0 0 9"
                        + " 9'><title>&b;</title></svg>",
                "<?xml-stylesheet href='HTTP/x.css'?><svg xmlns='NS' viewBox='0 0 9 9'><rect width='9'"
                        + " height='9'/></svg>",
                "<svg xmlns='NS' viewBox='0 0 9 9'><script>alert(1)</script></svg>",
                "<svg xmlns='NS' viewBox='0 0 9 9' onload='alert(1)'><rect width='9' height='9'/></svg>",
                "<svg xmlns='NS' viewBox='0 0 9 9'><image href='HTTP/x.png' width='9' height='9'/></svg>",
                "<svg xmlns='NS' xmlns:xlink='http://www.w3.org/1999/xlink' viewBox='0 0 9 9'><use"
                        + " xlink:href='FILE#a'/></svg>",
                "<svg xmlns='NS' viewBox='0 0 9 9'><a href='HTTP/'><rect width='9' height='9'/></a></svg>",
                "<svg xmlns='NS' viewBox='0 0 9 9'><style>@import url(HTTP/x.css);</style></svg>",
                "<svg xmlns='NS' viewBox='0 0 9 9'><rect width='9' height='9' fill='url(HTTP/x.svg#a)'/></svg>",
                "<svg xmlns='NS' viewBox='0 0 9 9'><rect width='9' height='9' style='fill:url(HTTP/x)'/></svg>",
                "<svg xmlns='NS' viewBox='0 0 9 9'><text font-family='x'>Clinic</text></svg>",
                "<svg xmlns='NS' viewBox='0 0 9 9'><foreignObject><rect width='9' height='9'/></foreignObject></svg>",
                "<svg xmlns='NS' viewBox='0 0 9 9'><animate attributeName='x'/></svg>",
                "<svg xmlns='http://example.invalid/' viewBox='0 0 9 9'><rect width='9' height='9'/></svg>",
                "<svg xmlns='NS' viewBox='0 0 1e9 9'><rect width='9' height='9'/></svg>",
                "<svg xmlns='NS' viewBox='0 0 9 9'><path d='M0 0 L boom'/></svg>",
                "<svg xmlns='NS' viewBox='0 0 9 9'></svg>",
                "<svg xmlns='NS' viewBox='0 0 9 9'><rect width='9'",
            })
    void drawingThatIsMoreThanShapesIsRefusedWithItsLine(String attack) {
        Problems problems = new Problems();
        String svg = attack.replace("NS", "http://www.w3.org/2000/svg")
                .replace("FILE", folder.resolve("secret.txt").toUri().toString())
                .replace("HTTP", "http://127.0.0.1:" + server.getAddress().getPort());

        assertThat(Logo.read("logo.svg", svg.getBytes(StandardCharsets.UTF_8), problems))
                .isEmpty();
        assertThat(problems.all()).singleElement().satisfies(p -> {
            assertThat(p.file()).isEqualTo("logo.svg");
            assertThat(p.message()).doesNotContain("kept-for-the-coach").doesNotContain("Exception");
        });
    }

    @Test
    void pictureOfAThousandMillionDotsIsRefusedBeforeItIsUnpacked() {
        byte[] bomb = ByteBuffer.allocate(64)
                .put(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0, 13, 'I', 'H', 'D', 'R'})
                .putInt(40_000)
                .putInt(40_000)
                .array();
        Problems problems = new Problems();

        assertThat(Logo.read("logo.png", bomb, problems)).isEmpty();
        assertThat(problems.all()).singleElement().satisfies(p -> assertThat(p.what())
                .contains("40000 × 40000"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"logo.gif", "logo.ttf", "logo", "logo.svgz"})
    void otherKindsOfFileAreRefused(String file) {
        Problems problems = new Problems();

        assertThat(Logo.read(file, new byte[] {1, 2, 3}, problems)).isEmpty();
        assertThat(problems.all()).hasSize(1);
    }

    @Test
    void damagedPngIsRefused() {
        byte[] head = ByteBuffer.allocate(64)
                .put(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0, 13, 'I', 'H', 'D', 'R'})
                .putInt(40)
                .putInt(40)
                .array();
        Problems problems = new Problems();

        assertThat(Logo.read("logo.png", head, problems)).isEmpty();
        assertThat(problems.all()).singleElement().satisfies(p -> assertThat(p.what())
                .contains("damaged"));
    }

    private static java.util.List<Integer> dots(Picture picture) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(picture.widthMm() * 10),
                (int) Math.ceil(picture.heightMm() * 10),
                BufferedImage.TYPE_INT_ARGB);
        var surface = image.createGraphics();
        surface.scale(10, 10);
        picture.painter().paint(surface);
        surface.dispose();
        return java.util.Arrays.stream(
                        image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth()))
                .boxed()
                .distinct()
                .toList();
    }
}
