using System.Text;
using System.Text.RegularExpressions;
using Microsoft.OpenApi;
using Microsoft.OpenApi.Reader;
using ProcessorDesk.Web.Bench;
using ProcessorDesk.Web.Tests.Harness;
using ProcessorDesk.Web.Tests.House;
using Xunit;

namespace ProcessorDesk.Web.Tests.Bench;

/// <summary>What is written about the bench, in the OpenAPI document and in docs/bench.md, is what its fields and figures say.</summary>
public sealed partial class DocumentTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Fact]
    public async Task The_served_document_is_valid_OpenAPI()
    {
        using var desk = new Desk(shop.Address, follows: false);
        using var answer = await desk.Client.GetAsync(new Uri(BenchList.Document, UriKind.Relative));
        var read = OpenApiDocument.Parse(await answer.Content.ReadAsStringAsync(), "json");

        Assert.Equal("application/json", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal(OpenApiSpecVersion.OpenApi3_1, read.Diagnostic!.SpecificationVersion);
        Assert.Empty(read.Diagnostic.Errors);
        Assert.Empty(read.Diagnostic.Warnings);
        Assert.Equal(BenchList.All.Select(calculator => calculator.Address), read.Document!.Paths.Keys);
    }

    [Fact]
    public void The_reader_finds_fault_with_a_document_that_has_some() =>
        Assert.NotEmpty(OpenApiDocument.Parse(BenchDocument.Text.Replace("\"responses\"", "\"answers\"", StringComparison.Ordinal), "json").Diagnostic!.Errors);

    [Fact]
    public void The_document_names_every_field_and_figure()
    {
        var document = OpenApiDocument.Parse(BenchDocument.Text, "json").Document!;

        foreach (var calculator in BenchList.All)
        {
            var operation = document.Paths[calculator.Address].Operations![HttpMethod.Get];
            var answer = operation.Responses!["200"].Content!["application/json"].Schema!;

            Assert.Equal(calculator.Fields.Select(field => (field.Name, field is { IsRequired: true, Default: "" })), operation.Parameters!.Select(parameter => (parameter.Name!, parameter.Required)));
            Assert.Equal(calculator.Figures.Select(figure => figure.Name), answer.Properties!.Keys);
            Assert.Equal(["200", "400", "422", "429"], operation.Responses.Keys);
            Assert.All(["400", "422", "429"], status => Assert.Contains("application/problem+json", operation.Responses[status].Content!.Keys));
        }
    }

    /// <summary>Between its two marks the page is made from the code. Where this fails, it prints what belongs there.</summary>
    [Fact]
    public void The_tables_in_the_docs_are_those_of_the_code()
    {
        var written = Between().Match(Repository.Read("docs/bench.md")).Groups["tables"].Value.Trim();

        Assert.True(Tables().Trim() == written, $"Between the marks of docs/bench.md belongs:\n{Tables()}");
    }

    private static string Tables()
    {
        var text = new StringBuilder();
        foreach (var calculator in BenchList.All)
        {
            text.Append($"### {calculator.Title}\n\n`{calculator.Address}` {calculator.Intro}\n\n| field | what | given as | blank |\n|---|---|---|---|\n");
            foreach (var field in calculator.Fields)
            {
                var blank = field switch { { Default: not "" } => $"`{field.Default}`", { IsRequired: true } => "refused", _ => "allowed" };
                var what = field.Label + (field.Hint == "" ? "" : $". {field.Hint}");
                text.Append($"| `{field.Name}`{(field.Repeats ? ", repeated" : "")} | {what} | {field.Form}{(field.Unit == "" ? "" : $" ({field.Unit})")} | {blank} |\n");
            }
            text.Append("\n| figure | what |\n|---|---|\n");
            foreach (var figure in calculator.Figures)
                text.Append(Line(figure));
            text.Append($"\nFor example `{calculator.Address}?{calculator.Example}`\n\n");
        }
        return text.ToString();
    }

    private static string Line(Figure figure)
    {
        var name = figure.Kind switch
        {
            FigureKind.Number or FigureKind.Text or FigureKind.Flag => $"`{figure.Name}`",
            FigureKind.Texts => $"`{figure.Name}[]`",
            FigureKind.Rows => $"`{figure.Name}[]`: {string.Join(", ", figure.Columns.Select(column => column.Kind == FigureKind.Texts ? $"`{column.Name}[]`" : $"`{column.Name}`"))}",
        };
        return $"| {name} | {figure.Label}{(figure.About == "" ? "" : ": " + figure.About)}{(figure.MayBeNull && !figure.About.Contains("null", StringComparison.Ordinal) ? "; null where there is none" : "")} |\n";
    }

    [GeneratedRegex("<!-- tables -->(?<tables>.*)<!-- end of tables -->", RegexOptions.Singleline)]
    private static partial Regex Between();
}
