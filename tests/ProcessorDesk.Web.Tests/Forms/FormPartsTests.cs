using System.Text.Encodings.Web;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Mvc.ViewFeatures;
using Microsoft.AspNetCore.Razor.TagHelpers;
using ProcessorDesk.Web.Forms;
using Xunit;

namespace ProcessorDesk.Web.Tests.Forms;

public sealed class FormPartsTests
{
    private static readonly EmptyModelMetadataProvider _metadata = new();
    private readonly ModelStateDictionary _state = new();

    [Fact]
    public async Task Label_hint_problem_and_field_stand_in_this_order_and_know_each_other()
    {
        _state.SetModelValue("Input.Gross", "12-x", "12-x");
        _state.AddModelError("Input.Gross", "Type a weight.");

        var field = await Drawn(new FieldTag { Label = "Gross", Hint = "As the scale shows it.", Kind = FieldKind.Weight, Unit = "lb" }, "Input.Gross", "");

        var input = field.QuerySelector("input")!;
        Assert.Equal(["LABEL", "P", "P", "DIV"], field.Children.Select(c => c.TagName));
        Assert.Equal("Input_Gross", field.QuerySelector("label")!.GetAttribute("for"));
        Assert.Equal(["hint", "problem"], field.QuerySelectorAll("p").Select(p => p.ClassName));
        Assert.Equal("Input_Gross-hint Input_Gross-problem Input_Gross-unit", input.GetAttribute("aria-describedby"));
        Assert.All(input.GetAttribute("aria-describedby")!.Split(' '), id => Assert.NotNull(field.QuerySelector("#" + id)));
        Assert.Equal("true", input.GetAttribute("aria-invalid"));
        Assert.Equal("12-x", input.GetAttribute("value"));
    }

    [Fact]
    public async Task A_field_without_trouble_says_nothing_of_it_and_shows_what_the_page_proposes()
    {
        var field = await Drawn(new FieldTag { Label = "Day", Kind = FieldKind.Date }, "Input.Day", new DateOnly(2026, 11, 27));

        var input = field.QuerySelector("input")!;
        Assert.Equal("2026-11-27", input.GetAttribute("value"));
        Assert.False(input.HasAttribute("aria-invalid"));
        Assert.False(input.HasAttribute("aria-describedby"));
    }

    [Fact]
    public async Task A_pin_is_never_written_back()
    {
        _state.SetModelValue("Input.Pin", "2580", "2580");

        var field = await Drawn(new FieldTag { Label = "PIN", Kind = FieldKind.Pin }, "Input.Pin", "2580");

        Assert.DoesNotContain("2580", field.OuterHtml, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_typed_is_written_as_text_whatever_it_looks_like()
    {
        var field = await Drawn(new FieldTag { Label = "Note", Kind = FieldKind.Area }, "Input.Note", "\n</textarea><script>alert(1)</script>");

        Assert.Null(field.QuerySelector("script"));
        Assert.Equal("\n</textarea><script>alert(1)</script>", field.QuerySelector("textarea")!.TextContent);
    }

    [Fact]
    public async Task The_first_tile_has_the_fields_own_id_so_that_the_summary_leads_to_it()
    {
        var set = await Drawn(new TilesTag { Label = "Animal", Items = [new("Deer", "Deer"), new("Hog", "Hog", "scalded"), new("Goat", "Goat", Closed: true)] }, "Input.Species", "Hog");

        var tiles = set.QuerySelectorAll("input").ToList();
        Assert.Equal(["Input_Species", "Input_Species-1", "Input_Species-2"], tiles.Select(t => t.Id));
        Assert.Equal(["Hog"], tiles.Where(t => t.HasAttribute("checked")).Select(t => t.GetAttribute("value")));
        Assert.True(tiles[2].HasAttribute("disabled"));
        Assert.Equal("LEGEND", set.FirstElementChild!.TagName);
    }

    [Fact]
    public async Task Several_tiles_may_be_ticked_where_the_page_says_so()
    {
        _state.SetModelValue("Input.Parts", new[] { "Cape", "Heart" }, "Cape,Heart");

        var set = await Drawn(new TilesTag { Label = "Give back", Many = true, Items = [new("Cape", "Cape"), new("Hide", "Hide"), new("Heart", "Heart")] }, "Input.Parts", Array.Empty<string>());

        Assert.Equal(["Cape", "Heart"], set.QuerySelectorAll("input[type=checkbox][checked]").Select(t => t.GetAttribute("value")));
    }

    [Fact]
    public async Task A_tick_sends_false_when_it_is_not_ticked()
    {
        var field = await Drawn(new TickTag { Label = "Rush order" }, "Input.Rush", true);

        Assert.Equal(["checkbox:true", "hidden:false"], field.QuerySelectorAll("input[name='Input.Rush']").Select(i => $"{i.GetAttribute("type")}:{i.GetAttribute("value")}"));
        Assert.True(field.QuerySelector("input")!.HasAttribute("checked"));
    }

    [Fact]
    public async Task A_list_opens_at_what_was_chosen()
    {
        var field = await Drawn(new PickTag { Label = "Product", None = "Choose one", Items = [new("1", "Ring sausage"), new("2", "Jerky")] }, "Input.ProductId", 2);

        Assert.Equal(["", "1", "2"], field.QuerySelectorAll("option").Select(o => o.GetAttribute("value")));
        Assert.Equal("2", field.QuerySelector("option[selected]")!.GetAttribute("value"));
    }

    [Theory]
    [InlineData("Input.TagId", "Tag id")]
    [InlineData("Input.Asks[1].ProductId", "Asks 2, product id")]
    [InlineData("q", "Q")]
    public void A_kept_field_is_named_in_words(string field, string words) => Assert.Equal(words, KeptFormWords.Name(field));

    private async Task<IElement> Drawn(ControlTag tag, string name, object value)
    {
        var data = new ViewDataDictionary(_metadata, _state);
        tag.ViewContext = new ViewContext { ViewData = data };
        tag.For = new ModelExpression(name, _metadata.GetModelExplorerForType(value.GetType(), value));
        var output = new TagHelperOutput("x", [], (_, _) => Task.FromResult<TagHelperContent>(new DefaultTagHelperContent()));
        await tag.ProcessAsync(new TagHelperContext([], new Dictionary<object, object>(), "x"), output);
        using var writer = new StringWriter();
        output.WriteTo(writer, HtmlEncoder.Default);
        return new HtmlParser().ParseDocument(writer.ToString()).Body!.FirstElementChild!;
    }
}
