using ProcessorDesk.Paper.Tests.Cast;
using ProcessorDesk.Paper.Tests.Rendering;
using Xunit;

namespace ProcessorDesk.Paper.Tests.Trace;

public sealed class TraceSheetTests
{
    [Fact]
    public void It_says_what_was_traced_when_and_by_whom_and_that_the_agency_goes_first()
    {
        using var pdf = new RenderedPdf(TraceSheet.Draw(TraceSamples.Ordinary));

        foreach (var said in new[] { Samples.Shop.Name, "White-tail deer, tag TX-0417", "Tue 1 Dec 2026, 2:05 PM", "by Nell Harrow", "HOLD:", "Ask your agency and follow it" })
            Assert.Contains(said, pdf.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void It_names_each_owner_with_the_phone_and_the_call_and_each_box_with_its_place_or_who_took_it()
    {
        using var pdf = new RenderedPdf(TraceSheet.Draw(TraceSamples.Ordinary));

        foreach (var said in new[] { "1 of 2", "(555) 010-0142", "(555) 010-0143", "waits for the agency", "Freezer 2", "Bea Roth", "Detected, sample S 118", "8.00 lb still in it", "S 7", "28.56 lb" })
            Assert.Contains(said, pdf.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_further_pages_say_what_they_belong_to()
    {
        using var pdf = new RenderedPdf(TraceSheet.Draw(TraceSamples.Extreme));

        Assert.True(pdf.Pages.Count > 5);
        Assert.All(pdf.Pages.Skip(1), page => Assert.Contains("continued", string.Join(' ', page.Words.Select(word => word.Text)), StringComparison.Ordinal));
    }
}
