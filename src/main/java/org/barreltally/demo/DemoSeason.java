package org.barreltally.demo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.io.IOException;
import java.io.PrintStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.people.AccessTokens;

/**
 * Plays the invented season once. Its requests have ids of their own, so a play that was cut short
 * is taken up again at the next start, and one that was finished is left alone.
 */
@ApplicationScoped
public class DemoSeason {

  /** What later steps may name of an earlier answer. */
  private static final List<String> TOLD = List.of("lot", "id");

  private final EntityManager entities;
  private final AccessTokens tokens;
  private final ObjectMapper json;

  public DemoSeason(EntityManager entities, AccessTokens tokens, ObjectMapper json) {
    this.entities = entities;
    this.tokens = tokens;
    this.json = json;
  }

  /** Plays the season against the running tool, unless the book holds anything else already. */
  public void play(int port, PrintStream out) {
    SeasonScript script = SeasonScript.read(json);
    if (!wanted(script)) {
      return;
    }
    UUID owner = owner();
    AccessTokens.Issued pass = tokens.issue(owner, "demo season", null);
    try {
      run(script, new RestCaller("http://localhost:" + port, pass.secret(), json), out);
    } catch (IOException e) {
      out.println("The invented season could not be played to its end: " + e.getMessage());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      tokens.revoke(owner, pass.token().id());
    }
  }

  private static void run(SeasonScript script, RestCaller rest, PrintStream out)
      throws IOException, InterruptedException {
    Map<String, String> told = new HashMap<>();
    SeasonSummary summary = new SeasonSummary();
    for (SeasonScript.Step step : script.steps()) {
      JsonNode answer = rest.post(step.pathWith(told), step.id(), step.bodyWith(told));
      if (step.name() != null) {
        for (String field : TOLD) {
          if (answer.hasNonNull(field)) {
            told.put(step.name() + "." + field, answer.get(field).asText());
          }
        }
      }
      if ("/api/barrels".equals(step.path())) {
        summary.barrel(answer);
      } else if ("/api/canning/runs".equals(step.path())) {
        summary.run(answer);
      } else if (step.path().endsWith("/settlement")) {
        summary.settlement(answer);
      }
    }
    summary.print(script.farm(), out);
  }

  /** An empty book, or one in which this season was begun and not finished. */
  @Transactional
  boolean wanted(SeasonScript script) {
    boolean empty = none("SELECT 1 FROM lots LIMIT 1");
    return empty || (asked(script.firstId()) && !asked(script.lastId()));
  }

  private boolean asked(UUID id) {
    return !entities
        .createNativeQuery("SELECT 1 FROM requests WHERE key = :id")
        .setParameter("id", id)
        .getResultList()
        .isEmpty();
  }

  private boolean none(String query) {
    return entities.createNativeQuery(query).getResultList().isEmpty();
  }

  @Transactional
  UUID owner() {
    return (UUID)
        entities
            .createNativeQuery(
                "SELECT id FROM users WHERE role = 'owner' ORDER BY created_at LIMIT 1")
            .getSingleResult();
  }
}
