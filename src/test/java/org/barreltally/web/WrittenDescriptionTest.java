package org.barreltally.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import org.barreltally.Owner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The description of the interface in both ways to write it, however it is asked for. */
@QuarkusTest
class WrittenDescriptionTest {

  @ParameterizedTest
  @CsvSource({
    "/openapi, */*, yaml",
    "/openapi, application/yaml, yaml",
    "/openapi, application/json, json",
    "/openapi?format=json, */*, json",
    "/openapi?format=JSON, application/yaml, json",
    "/openapi?format=yaml, application/json, yaml",
    "/openapi.json, */*, json",
    "/openapi.json, application/yaml, json",
    "/openapi.json/, */*, json",
    "/openapi.yaml/, */*, yaml",
    "/openapi.yaml, application/json, yaml",
    "/openapi.yml, */*, yaml"
  })
  void it_comes_as_it_is_asked_for(String address, String accept, String format) throws Exception {
    Response answer = Owner.asks().accept(accept).get(address);
    assertEquals(200, answer.statusCode());
    assertEquals("application/" + format + ";charset=UTF-8", answer.contentType());
    assertEquals(format.equals("json"), answer.asString().startsWith("{"));
  }

  @Test
  void both_ways_say_the_same() throws Exception {
    JsonNode json = new ObjectMapper().readTree(Owner.asks().get("/openapi.json").asString());
    JsonNode yaml = new YAMLMapper().readTree(Owner.asks().get("/openapi.yaml").asString());
    assertEquals(json, new ObjectMapper().readTree(yaml.toString()));
    assertTrue(json.at("/paths").size() > 100, json.at("/info").toString());
  }
}
