using FsCheck.Xunit;
using ProcessorDesk.Trade.Blending;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Blending;

/// <summary>What least cost promises, over thousands of made-up blocks.</summary>
[Properties(MaxTest = 2000, Arbitrary = [typeof(BlendCases)])]
public sealed class LeastCostPromises
{
    [Property]
    public void There_is_a_blend_or_a_reason_and_never_both(BlendWanted wanted)
    {
        var answer = LeastCost.Find(wanted);

        Assert.Equal(answer.Blend is null, answer.Findings.Count > 0);
    }

    [Property]
    public void The_exact_mix_keeps_every_bound(BlendWanted wanted)
    {
        if (LeastCost.Find(wanted).Blend is not { } blend)
            return;

        Assert.Equal(Ratio.One, Ratio.Sum(blend.Parts.Select(part => part.Share)));
        Assert.Equal(blend.Fat, Ratio.Sum(blend.Parts.Select(part => part.Share * part.Material.Fat.ToRatio())));
        Assert.True(blend.Fat >= wanted.Fat.Least.ToRatio() && blend.Fat <= wanted.Fat.Most.ToRatio());
        Assert.All(blend.Parts, part =>
        {
            Assert.True(part.Share >= part.Material.LeastShare.ToRatio() && part.Share <= part.Material.MostShare.ToRatio());
            Assert.True(part.Material.OnHand is not { } stock || part.Pounds.ToDecimal() <= stock.Pounds + 0.0001m);
        });
    }

    [Property]
    public void Weighed_parts_sum_in_milligrams_and_as_printed(BlendWanted wanted)
    {
        if (LeastCost.Find(wanted).Blend is not { } blend)
            return;

        Assert.Equal(wanted.Block.Milligrams, blend.Parts.Sum(part => part.Weight.Milligrams));
        Assert.Equal(wanted.Division.Figure(wanted.Block), blend.Parts.Sum(part => wanted.Division.Figure(part.Weight)));
        Assert.DoesNotContain(blend.Parts, part => part.Weight.IsNegative);
    }

    [Property]
    public void Weighed_parts_keep_every_bound_or_it_is_told(BlendWanted wanted)
    {
        if (LeastCost.Find(wanted).Blend is not { Notes.Count: 0 } blend)
            return;

        var whole = wanted.Division.Figure(wanted.Block);
        var fat = blend.Parts.Sum(part => wanted.Division.Figure(part.Weight) * part.Material.Fat.Percent) / whole;
        Assert.InRange(fat, wanted.Fat.Least.Percent - 0.0000001m, wanted.Fat.Most.Percent + 0.0000001m);
        Assert.All(blend.Parts, part =>
        {
            var percent = wanted.Division.Figure(part.Weight) / whole * 100m;
            Assert.InRange(percent, part.Material.LeastShare.Percent - 0.0000001m, part.Material.MostShare.Percent + 0.0000001m);
        });
    }

    /// <summary>Some of one material for some of another at the same fat, or of two, never makes it cheaper.</summary>
    [Property]
    public void Nothing_cheaper_is_found_by_swapping_one_material_for_another(BlendWanted wanted)
    {
        if (LeastCost.Find(wanted).Blend is not { } blend)
            return;

        foreach (var more in blend.Parts.Where(part => HasRoom(wanted, part)))
        {
            foreach (var less in blend.Parts.Where(part => part.Share > part.Material.LeastShare.ToRatio()))
            {
                var towards = more.Material.Fat.CompareTo(less.Material.Fat);
                if (towards > 0 ? blend.Fat < wanted.Fat.Most.ToRatio() : towards == 0 || blend.Fat > wanted.Fat.Least.ToRatio())
                    Assert.True(more.Material.Price >= less.Material.Price);
            }
        }
    }

    /// <summary>The named bounds alone leave no mix, and with any one of them eased there is one: no smaller set would do.</summary>
    [Property]
    public void The_bounds_named_clash_and_none_of_them_can_be_left_out(BlendWanted wanted)
    {
        if (LeastCost.Find(wanted) is not { Blend: null, Findings: var findings })
            return;

        var fields = findings.Select(finding => finding.Field).ToList();
        Assert.Equal(fields.Count, fields.Distinct().Count());
        Assert.Null(LeastCost.Find(With(wanted, fields)).Blend);
        Assert.All(fields, left => Assert.NotNull(LeastCost.Find(With(wanted, [.. fields.Where(field => field != left)])).Blend));
    }

    /// <summary>Clear of what keeping weights in whole milligrams costs.</summary>
    private static bool HasRoom(BlendWanted wanted, BlendPart part) =>
        part.Share < part.Material.MostShare.ToRatio()
        && (part.Material.OnHand is not { } stock || part.Share * Ratio.Of(wanted.Block.Milligrams, 1) < Ratio.Of(stock.Milligrams - 2, 1));

    /// <summary>The block with these bounds and no others.</summary>
    private static BlendWanted With(BlendWanted wanted, List<string> fields) => wanted with
    {
        Fat = new FatBand(
            fields.Contains("Fat.Least") ? wanted.Fat.Least : Proportion.Zero,
            fields.Contains("Fat.Most") ? wanted.Fat.Most : Proportion.Whole),
        Materials =
        [
            .. wanted.Materials.Select((material, i) => material with
            {
                LeastShare = fields.Contains($"Materials[{i}].LeastShare") ? material.LeastShare : Proportion.Zero,
                MostShare = fields.Contains($"Materials[{i}].MostShare") ? material.MostShare : Proportion.Whole,
                OnHand = fields.Contains($"Materials[{i}].OnHand") ? material.OnHand : null,
            }),
        ],
    };
}
