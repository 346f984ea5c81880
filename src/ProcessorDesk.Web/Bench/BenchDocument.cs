using System.Text.Json.Nodes;

namespace ProcessorDesk.Web.Bench;

/// <summary>The bench in an OpenAPI document, made from the same fields and figures as its pages.</summary>
public static class BenchDocument
{
    private static readonly JsonNode s_problem = JsonNode.Parse("""
        {
          "type": "object",
          "description": "RFC 9457 problem details.",
          "required": ["type", "title", "status", "detail", "errors"],
          "properties": {
            "type": { "type": "string", "format": "uri-reference" },
            "title": { "type": "string" },
            "status": { "type": "integer" },
            "detail": { "type": "string" },
            "errors": {
              "type": "object",
              "description": "Words for a person, by field.",
              "additionalProperties": { "type": "array", "items": { "type": "string" } }
            }
          }
        }
        """)!;

    /// <summary>As it is served.</summary>
    public static string Text { get; } = BenchJson.Write(new JsonObject
    {
        ["openapi"] = "3.1.0",
        ["info"] = new JsonObject
        {
            ["title"] = "ProcessorDesk bench",
            ["version"] = "1",
            ["description"] = "The arithmetic of a custom meat and game processor, one calculator an address. Figures are plain decimals with a point. Local rules go before every answer.",
        },
        ["servers"] = new JsonArray(new JsonObject { ["url"] = "/" }),
        ["paths"] = new JsonObject(BenchList.All.Select(calculator => KeyValuePair.Create<string, JsonNode?>(calculator.Address, new JsonObject { ["get"] = Operation(calculator) }))),
        ["components"] = new JsonObject { ["schemas"] = new JsonObject { ["Problem"] = s_problem } },
    });

    private static JsonObject Operation(Calculator calculator) => new()
    {
        ["operationId"] = calculator.Path,
        ["summary"] = calculator.Title,
        ["description"] = calculator.Intro,
        ["parameters"] = new JsonArray([.. calculator.Fields.Select(Parameter)]),
        ["responses"] = new JsonObject
        {
            ["200"] = Response("The answer; a page unless JSON is asked for.", (BenchJson.Plain, Object(calculator.Figures)), Page()),
            ["400"] = Refused("A field is missing or can't be taken."),
            ["422"] = Refused("There is no answer: out of reach, or nothing is published."),
            ["429"] = Refused("Too many requests from one address; Retry-After says when to come again."),
        },
    };

    private static JsonObject Parameter(Field field)
    {
        var parameter = new JsonObject
        {
            ["name"] = field.Name,
            ["in"] = "query",
            ["required"] = field is { IsRequired: true, Default: "" },
            ["description"] = About(field),
            ["schema"] = field.Repeats ? new JsonObject { ["type"] = "array", ["minItems"] = 1, ["maxItems"] = Entries.MostEntries, ["items"] = Schema(field) } : Schema(field),
        };
        if (field.Repeats)
            (parameter["style"], parameter["explode"]) = ("form", true);
        return parameter;
    }

    private static JsonObject Schema(Field field)
    {
        var schema = new JsonObject { ["type"] = field.IsNumber ? "number" : "string" };
        if (field.Choices.Count > 0)
            schema["enum"] = new JsonArray([.. field.Choices.Select(choice => JsonValue.Create(choice.Value))]);
        if (field.Default.Length > 0)
            schema["default"] = field.IsNumber ? JsonNode.Parse(field.Default) : field.Default;
        return schema;
    }

    private static string About(Field field) =>
        string.Join(". ", new[] { field.Label + (field.Unit == "" ? "" : $" ({field.Unit})"), field.Form, field.Hint }.Where(words => words != "")) + ".";

    private static JsonObject Object(IReadOnlyList<Figure> figures) => new()
    {
        ["type"] = "object",
        ["required"] = new JsonArray([.. figures.Select(figure => JsonValue.Create(figure.Name))]),
        ["properties"] = new JsonObject(figures.Select(figure => KeyValuePair.Create<string, JsonNode?>(figure.Name, Property(figure)))),
    };

    private static JsonObject Property(Figure figure)
    {
        var schema = figure.Kind switch
        {
            FigureKind.Number => new JsonObject { ["type"] = "number" },
            FigureKind.Text => new JsonObject { ["type"] = "string" },
            FigureKind.Flag => new JsonObject { ["type"] = "boolean" },
            FigureKind.Texts => new JsonObject { ["type"] = "array", ["items"] = new JsonObject { ["type"] = "string" } },
            FigureKind.Rows => new JsonObject { ["type"] = "array", ["items"] = Object(figure.Columns) },
        };
        if (figure.MayBeNull)
            schema["type"] = new JsonArray(schema["type"]!.DeepClone(), "null");
        schema["description"] = figure.About == "" ? figure.Label : $"{figure.Label}: {figure.About}";
        return schema;
    }

    private static JsonObject Refused(string words) =>
        Response(words, (BenchJson.Problem, new JsonObject { ["$ref"] = "#/components/schemas/Problem" }), Page());

    private static JsonObject Response(string words, params (string Type, JsonNode Schema)[] contents) => new()
    {
        ["description"] = words,
        ["content"] = new JsonObject(contents.Select(content => KeyValuePair.Create<string, JsonNode?>(content.Type, new JsonObject { ["schema"] = content.Schema }))),
    };

    private static (string, JsonNode) Page() => ("text/html", new JsonObject { ["type"] = "string" });
}
