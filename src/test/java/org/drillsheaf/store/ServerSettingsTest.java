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

    @Test
    void hostAndDatabaseAreReadOutOfAnAddress() {
        StoreAddress.Server house =
                server("jdbc:postgresql://db.clinic.example:5433/drill%20sheaf?sslmode=verify-full&user=desk");
        assertThat(house.host()).hasValue("db.clinic.example:5433");
        assertThat(house.database()).isEqualTo("drill sheaf");
        assertThat(server("jdbc:postgresql://one,two/record").host()).hasValue("one,two");
        assertThat(server("jdbc:postgresql:record?user=desk").host()).isEmpty();
        assertThat(server("jdbc:postgresql:record?user=desk").database()).isEqualTo("record");
        assertThat(server("jdbc:postgresql://db.clinic.example/?user=desk").database())
                .isEqualTo("desk");
    }

    private static StoreAddress.Server server(String address) {
        return (StoreAddress.Server) StoreAddress.of(address);
    }
}
