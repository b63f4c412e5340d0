package org.drillsheaf.handout.press;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import org.apache.xmlgraphics.io.Resource;
import org.apache.xmlgraphics.io.ResourceResolver;

/**
 * The only way from the page setter to the world: our fonts from the class path. Everything else, be it a file, an address
 * or a path that climbs, is refused.
 */
final class LockedResources implements ResourceResolver {
    static final URI BASE = URI.create("http://handout.invalid/");

    private final FontFiles fonts;

    LockedResources(FontFiles fonts) {
        this.fonts = fonts;
    }

    @Override
    public Resource getResource(URI address) throws IOException {
        byte[] font =
                fonts.at(address.toString()).orElseThrow(() -> new IOException("nothing is read from " + address));
        return new Resource(new ByteArrayInputStream(font));
    }

    @Override
    public OutputStream getOutputStream(URI address) throws IOException {
        throw new IOException("nothing is written to " + address);
    }
}
