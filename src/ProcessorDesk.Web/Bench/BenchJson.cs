using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.Net.Http.Headers;

namespace ProcessorDesk.Web.Bench;

/// <summary>The bench in JSON: answers by their figures' names, and what can't be answered as RFC 9457 problem details.</summary>
public static class BenchJson
{
    public const string Plain = "application/json";

    public const string Problem = "application/problem+json";

    /// <summary>Fields can't be taken.</summary>
    public const string BadInput = BenchList.Root + "#bad-input";

    /// <summary>Fields can be taken, and the trade has no answer.</summary>
    public const string Impossible = BenchList.Root + "#impossible";

    /// <summary>More requests than the bench takes from one address.</summary>
    public const string TooMany = BenchList.Root + "#too-many";

    private static readonly JsonSerializerOptions s_options = new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>JSON is asked for and a page is not, or less.</summary>
    public static bool IsWanted(HttpRequest request)
    {
        if (!MediaTypeHeaderValue.TryParseList(request.Headers.Accept, out var accepted))
            return false;
        var json = accepted.Where(type => type.MediaType.Equals(Plain, StringComparison.OrdinalIgnoreCase) || type.MediaType.Equals(Problem, StringComparison.OrdinalIgnoreCase)).ToList();
        var page = accepted.Where(type => type.MediaType.Equals("text/html", StringComparison.OrdinalIgnoreCase)).ToList();
        return json.Count > 0 && Wish(json) > 0 && (page.Count == 0 || Wish(json) > Wish(page) || Wish(json) == Wish(page) && accepted.IndexOf(json[0]) < accepted.IndexOf(page[0]));

        static double Wish(List<MediaTypeHeaderValue> types) => types.Max(type => type.Quality ?? 1);
    }

    /// <summary>An answer: every figure the calculator lists, in its order.</summary>
    public static string Write(Calculator calculator, Answer answer) => Write(Row(calculator.Figures, answer.Figures));

    /// <summary>Problem details.</summary>
    /// <param name="errors">Words by field.</param>
    public static string Write(int status, string type, string title, string detail, IReadOnlyDictionary<string, List<string>> errors) => Write(new JsonObject
    {
        ["type"] = type,
        ["title"] = title,
        ["status"] = status,
        ["detail"] = detail,
        ["errors"] = new JsonObject(errors.Select(field => KeyValuePair.Create<string, JsonNode?>(field.Key, Texts(field.Value)))),
    });

    public static string Write(JsonNode json) => json.ToJsonString(s_options);

    private static JsonObject Row(IReadOnlyList<Figure> figures, IReadOnlyDictionary<string, object?> values) =>
        new(figures.Select(figure => KeyValuePair.Create(figure.Name, Node(figure, values[figure.Name]))));

    private static JsonNode? Node(Figure figure, object? value) => value switch
    {
        null => null,
        decimal number => JsonValue.Create(PlainNumber.Bare(number)),
        string text => JsonValue.Create(text),
        bool flag => JsonValue.Create(flag),
        IEnumerable<string> texts => Texts(texts),
        IEnumerable<IReadOnlyDictionary<string, object?>> rows => new JsonArray([.. rows.Select(row => Row(figure.Columns, row))]),
        _ => throw new InvalidOperationException($"{figure.Name} is of no kind that the bench writes."),
    };

    private static JsonArray Texts(IEnumerable<string> texts) => new([.. texts.Select(text => JsonValue.Create(text))]);
}
