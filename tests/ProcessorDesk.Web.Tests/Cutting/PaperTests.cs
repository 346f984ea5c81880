using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Cutting;

public sealed class PaperTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Fact]
    public async Task The_cut_sheet_opens_as_a_pdf()
    {
        var (job, _) = shop.TakeIn("Ada Fenn", 128.5m, 96m);
        await ExpectPdf($"/Cutting/Paper/{job}");
    }

    [Fact]
    public async Task The_ticket_of_a_lug_opens_as_a_pdf_and_writes_nothing()
    {
        var (job, animals) = shop.TakeIn("Ada Fenn", 128.5m);
        var lug = shop.AddLug(3.10m);
        shop.StartCutting(job);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");
        await (await desk.Open($"/Cutting/WeighIn/{job}")).Send("Save the weight", ("Input.Lug", lug), ("Input.Gross", "20.10"));
        shop.Hold(animals[0], HoldReason.DiseaseTest);
        var filling = shop.Read(records => records.Fillings.Single(one => one.JobId == job).Id);
        var acts = shop.Read(records => records.Journal.Count());

        await ExpectPdf($"/Cutting/Lug/{filling}");

        Assert.Equal(acts, shop.Read(records => records.Journal.Count()));
    }

    private async Task ExpectPdf(string path)
    {
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");
        using var answer = await desk.Client.GetAsync(new Uri(path, UriKind.Relative));
        Assert.Equal("application/pdf", answer.Content.Headers.ContentType?.MediaType);
        var bytes = await answer.Content.ReadAsByteArrayAsync();
        Assert.Equal("%PDF-"u8.ToArray(), bytes[..5]);
    }
}
