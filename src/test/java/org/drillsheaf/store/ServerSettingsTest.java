package org.drillsheaf.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import org.drillsheaf.store.sql.Database;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.junit.jupiter.api.Test;

/** A server may be set up for speed; what the record calls saved is on its disk all the same. */
final class ServerSettingsTest {
    private static final String ASK = "SHOW synchronous_commit";

    @Test
    void aServerThatAnswersBeforeTheDiskIsAskedToWaitForIt() throws SQLException {
        StoreAddress.Server server = (StoreAddress.Server) Engines.SERVER.address(Path.of(""));
        try (Connection plain = TestServer.connect(server);
                ResultSet answer = plain.createStatement().executeQuery(ASK)) {
            assertThat(answer.next()).isTrue();
            assertThat(answer.getString(1)).as("this server's own setting").isEqualTo("off");
        }
        try (Passphrase passphrase = Engines.passphrase();
                Database database = Database.open(server, passphrase)) {
            assertThat(database.<String>read(handle ->
                            handle.createQuery(ASK).mapTo(String.class).one()))
                    .isEqualTo("on");
        }
    }
}
